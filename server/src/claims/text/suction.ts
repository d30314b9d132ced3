/** The rule of suction that quizzes, tables and prose are held against: a catheter of at most twice the tube's number. */

/** How far over twice the tube a catheter must be, in French: two steps, since rules and tables round. */
const OVER = 2;

/** Is a catheter, in French, too thick for a tracheal tube by its inside in millimetres, whatever rule is followed? */
export const overTube = (catheter: number, tube: number): boolean => catheter >= 2 * tube + OVER;

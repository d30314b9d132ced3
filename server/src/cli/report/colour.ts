/** Colours of a terminal. Meaning never rests on colour alone. */
import { isatty } from 'node:tty';

export interface Paint {
  readonly strong: (text: string) => string;
  readonly faint: (text: string) => string;
  readonly error: (text: string) => string;
  readonly warning: (text: string) => string;
  readonly info: (text: string) => string;
}

const plain = (text: string): string => text;
const code = (on: number, off: number) => (text: string) => `\u001b[${on}m${text}\u001b[${off}m`;

const PLAIN: Paint = { strong: plain, faint: plain, error: plain, warning: plain, info: plain };

const COLOUR: Paint = {
  strong: code(1, 22),
  faint: code(2, 22),
  error: code(31, 39),
  warning: code(33, 39),
  info: code(36, 39),
};

export const paint = (colour: boolean): Paint => (colour ? COLOUR : PLAIN);

/** Only when standard output is a terminal; NO_COLOR (any value but empty) and TERM=dumb switch it off. */
export function wantsColour(env: NodeJS.ProcessEnv): boolean {
  return isatty(1) && !env.NO_COLOR && env.TERM !== 'dumb';
}

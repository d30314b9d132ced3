/** Words before and behind a value, each with the blank that parts it from the value. */
export const BEFORE: readonly (readonly [string, string])[] = [
  ['metric ', 'metrisch '],
  ['about ', 'etwa '],
  ['accepts ', 'nimmt auf: '],
];

export const AFTER: readonly (readonly [string, string])[] = [
  [' inside', ' innen'],
  [' (needle)', ' (Kanüle)'],
  [' (IV catheter)', ' (Venenverweilkanüle)'],
  [' (synthetic, silk, steel)', ' (synthetisch, Seide, Stahl)'],
  [' (gut)', ' (Catgut)'],
];

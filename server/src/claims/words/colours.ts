/** Colour words and the family each belongs to. Shade words ("deep", "pale") do not change the family. */
export const COLOUR_WORDS: ReadonlyMap<string, string> = new Map(
  Object.entries({
    grey: 'grey', gray: 'grey', silver: 'grey',
    green: 'green', blue: 'blue', navy: 'blue', pink: 'pink', rose: 'pink', yellow: 'yellow', orange: 'orange',
    red: 'red', white: 'white', black: 'black', brown: 'brown',
    purple: 'purple', violet: 'purple', mauve: 'purple', lilac: 'purple', lavender: 'purple',
    cream: 'cream', ivory: 'cream', turquoise: 'blue-green', teal: 'blue-green',
  }),
);

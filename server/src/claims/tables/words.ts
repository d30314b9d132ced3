/** Headers of columns that may say anything about the thing of their row. */

const GENERAL = new Set(
  `fact facts note notes remark remarks comment comments detail details feature features description know point points data appearance info information summary remember`.split(
    /\s+/,
  ),
);
const SMALL = new Set(
  'and or to what key in short about useful the of its some more other with worth'.split(' '),
);

export const wordsIn = (header: string): string[] => header.toLowerCase().match(/\p{L}+/gu) ?? [];

/** "Notes", "What to know": nothing in the header says that another thing is spoken of. */
export const generalHeader = (header: string): boolean => {
  const words = wordsIn(header);
  return (
    words.some((word) => GENERAL.has(word)) && words.every((word) => GENERAL.has(word) || SMALL.has(word))
  );
};

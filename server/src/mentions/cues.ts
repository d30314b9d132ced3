/**
 * What a text must hold before a notation is worth trying: a short pattern for each, so that most passages try
 * few of the long ones. A cue may say yes too often, never no wrongly; a notation without a cue is always tried.
 * Most passages hold no digit: what needs one is asked of the others alone.
 */
/** Each way of writing these has a digit or a fraction in it. */
const IN_DIGITS: Readonly<Record<string, RegExp>> = {
  'tube-inner': /[0-9m]\s?i\.?d|id\s[0-9]/i,
  hegar: /hegar/i,
  'wire-gauge': /wg|b&s/i,
  'gauge-after': /[0-9](?:\s?-?\s?|[‐‑–])(?:g|calibre|jauge)/i,
  'gauge-before': /g[0-9]|(?:gau?ge|calibre|jauge)s?\s(?:sizes?\s)?[0-9]/i,
  'french-after': /[0-9]\s?-?\s?(?:f|ch|g\sfr)/i,
  'french-before': /(?:fr|ch|fg)\.?\s?[0-9]|french|charri/i,
  inches: /[0-9½¼¾⅛⅜⅝⅞⅓⅔](?:[\s]?(?:-[\s]?)?|[\s]of[\s]an[\s])(?:in|pul|pou|zoll|[″"”])/i,
  'metric-before': /metric|ep\s?[0-9]|m\.?\s[0-9]/i,
  'metric-after': /metric/i,
  millimetres: /[0-9](?:[\s]?-?|[\s]of[\s]a[\s])m(?:m|il)/i,
  'millimetres-measured':
    /[.,][0-9]{1,3}\s(?:o|i|a|w)|(?:OD|D\.|iameter)\s(?:is\s|of\s)?[0-9]|millimet(?:re|er)s,?\s[itw]/i,
  centimetres: /[0-9][\s]?-?[cz]/i,
  micrometres: /[0-9]\s?-?(?:[µμu]m|micro)/i,
  numbered: /(?:#\s?|n(?:os?|r|º|°)\.?\s|(?:numbers?|sizes?|größe|talla|tamaño|taille)\s(?:an?\s)?)[0-9]/i,
  'usp-dashed': /[0-9]\s?[-‐‑‒–−/⁄]\s?[0o]/i,
  'usp-hyphened': /[0-2]-[A-Za-z]{3}/,
  'usp-zeros': /00/,
  'usp-named': /USP/,
  'usp-decimal-slip': /[0-9]\.0/,
  'wire-inches': /[.,]0[0-9]/,
  'wire-digits': /0[1-3][0-9]/,
  'inch-fraction': /[1357]\/(?:[248]|16|32)|[½¼¾⅛⅜⅝⅞]/,
  'needle-product': /(?:[x×]|by)\s?[0-9]/i,
  'needle-product-bare': /(?:[x×]|by)\s?[0-9]/i,
  'needle-slash': /[1-9][0-9]\/(?:[3-9]|1[0-9]|20)(?![0-9])/,
};

/** These may be written in words alone. */
const IN_WORDS: Readonly<Record<string, RegExp>> = {
  'gauge-spoken':
    /[\s-]gau?ge(?<=(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|teen|ty|zero)[\s-]gau?ge)/i,
  'french-spoken': /french|charri/i,
  'inches-spoken': /inch/i,
  'millimetres-spoken': /millimet/i,
  'numbered-spoken': /number|size|no\./i,
  'usp-spoken': /[\s-](?:oh|aught|ought|nought|zero|o(?![a-z]))/i,
  'wire-spoken':
    /[\s-]thou(?:sandths)?(?![a-z0-9])|(?<![0-9a-z])(?:oh|zero|o)[\s-](?:one|two|three|fourteen|eighteen|twenty|thirty)/i,
  'wire-short': /wire/i,
};

export const CUES: Readonly<Record<string, RegExp>> = { ...IN_DIGITS, ...IN_WORDS };

const DIGIT = /[0-9½¼¾⅛⅜⅝⅞⅓⅔]/;
export const hasDigit = (text: string): boolean => DIGIT.test(text);

/** The notation is written with a digit or a fraction, and not looked for where there is none. */
export const needsDigit = (notation: string): boolean => IN_DIGITS[notation] !== undefined;

/**
 * What a text must hold before a notation is worth trying: a short pattern for each, so that most passages try
 * few of the long ones. A cue may say yes too often, never no wrongly; a notation without a cue is always tried.
 */
export const CUES: Readonly<Record<string, RegExp>> = {
  'tube-inner': /(?:[0-9]|mm)\s?i\.?d|id\s[0-9]/i,
  hegar: /hegar/i,
  'wire-gauge': /wg|b&s/i,
  'gauge-after': /[0-9](?:\s?-?\s?|[‐‑–])(?:g|calibre|jauge)/i,
  'gauge-spoken':
    /(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|teen|ty|zero)[\s-]gau?ge/i,
  'gauge-before': /g[0-9]|(?:gau?ge|calibre|jauge)s?\s(?:sizes?\s)?[0-9]/i,
  'french-after': /[0-9]\s?-?\s?(?:f|ch|g\sfr)/i,
  'french-spoken': /french|charri/i,
  'french-before': /(?:fr|ch|fg)\.?\s?[0-9]|french|charri/i,
  inches: /[0-9½¼¾⅛⅜⅝⅞⅓⅔](?:[\s]?(?:-[\s]?)?|[\s]of[\s]an[\s])(?:in|pul|pou|zoll|[″"”])/i,
  'inches-spoken': /inch/i,
  'metric-before': /metric|ep\s?[0-9]|m\.?\s[0-9]/i,
  'metric-after': /metric/i,
  millimetres: /[0-9](?:[\s]?-?|[\s]of[\s]a[\s])m/i,
  'millimetres-measured':
    /[0-9]\s(?:o|i|a|w)|(?:OD|D\.|iameter)\s(?:is\s|of\s)?[0-9]|millimet(?:re|er)s,?\s[itw]/i,
  centimetres: /[0-9][\s]?-?[cz]/i,
  micrometres: /[0-9]\s?-?(?:[µμu]m|micro)/i,
  'millimetres-spoken': /millimet/i,
  numbered: /[#º°]|no|nr|numb|size|größe|talla|tamaño|taille/i,
  'numbered-spoken': /number|size|no\./i,
  'usp-dashed': /[0-9]\s?[-‐‑‒–−/⁄]\s?[0o]/i,
  'usp-hyphened': /[0-2]-[A-Za-z]{3}/,
  'usp-zeros': /00/,
  'usp-spoken': /[\s-](?:oh|aught|ought|nought|zero|o(?![a-z]))/i,
  'usp-named': /USP/,
  'usp-decimal-slip': /[0-9]\.0/,
  'wire-inches': /[.,]0[0-9]/,
  'wire-digits': /0[1-3][0-9]/,
  'wire-spoken': /thou|(?:oh|zero|o)[\s-](?:one|two|three|fourteen|eighteen|twenty|thirty)/i,
  'wire-short': /wire/i,
  'inch-fraction': /[0-9]\/[0-9]|[½¼¾⅛⅜⅝⅞]/,
  'needle-product': /(?:[x×]|by)\s?[0-9]/i,
  'needle-product-bare': /(?:[x×]|by)\s?[0-9]/i,
  'needle-slash': /[0-9]\/[0-9]/,
};

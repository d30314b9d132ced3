/** Tissues that are sewn, by the name under which the table of points has them. */
export const TISSUES: ReadonlyMap<string, string> = new Map([
  ...['skin', 'dermis', 'epidermis', 'scalp', 'sole', 'hide', 'forehead', 'eyebrow'].map(
    (word) => [word, 'skin'] as const,
  ),
  ...[
    'bowel',
    'bowels',
    'small-bowel',
    'large-bowel',
    'gut',
    'intestine',
    'intestines',
    'colon',
    'ileum',
    'jejunum',
    'duodenum',
    'gut-wall',
    'rectum',
    'caecum',
    'intestinal',
  ].map((word) => [word, 'bowel'] as const),
  ...[
    'vessel',
    'vessels',
    'artery',
    'arteries',
    'vein',
    'veins',
    'aorta',
    'vascular',
    'carotid',
    'arterial',
  ].map((word) => [word, 'vessels'] as const),
  ['eye', 'the eye'],
  ...['cornea', 'sclera', 'corneal', 'scleral'].map((word) => [word, 'cornea and sclera'] as const),
  ...['peritoneum', 'peritoneal'].map((word) => [word, 'peritoneum'] as const),
  ...['liver', 'hepatic'].map((word) => [word, 'liver'] as const),
  ...['kidney', 'kidneys', 'renal'].map((word) => [word, 'kidney'] as const),
  ...['spleen', 'splenic'].map((word) => [word, 'spleen'] as const),
]);
/** Tissues that texts give to several points: they may stand in a list with the others. */
export const OTHER_TISSUES =
  /^(?:muscle|fascia|tendon|tendons|fat|dura|mucosa|nerve|nerves|gum|gums|subcutis|sheath)$/;
export const TOUGH = /^(?:tough|thick|sole|dense|leathery|callused|calloused)$/;

/** Words that set a size and a length equal, and words that may stand beside them. One idea a list. */
import type { Item } from '../text/items.ts';

export const EQUAL = new Set(
  `= ≈ ~ → ➜ => ⇒ is are was equals equal measures measure measured means mean comes come works work makes make gives i.e. i.e namely which that stands stand
  being be reads becomes carries bears shows showed covers amounts boils that's it's fall falls lie lies sit sits run runs range ranges read called call corresponds converts translates`.split(
    /\s+/,
  ),
);
export const IDLE = new Set(
  `a an the of about around roughly approximately approx nearly almost just under over hair shade touch some or in at on to out by exactly
  outer outside external diameter od o.d width across wide thick thickness size calibre caliber needle cannula catheter tube sheath
  wire guidewire suture thread strand drain line foley one feeding dialysis our its it they so only little bit more less than not quite itself hub
  nominal inner internal inside bore lumen id i.d radius circumference girth full whole good clean single diameter's roughly measuring micrometer caliper calipers units metric millimetres mm
  actually still really then for french gauge number size's silk nylon gut polypropylene converted stated labelled label tray old hypodermic iv tall fr g
  corresponding range band interval limits spec pharmacopeia pharmacopoeia runs sits lies starts printed stated total overall works put comes you get
  in'mm outwardly full exact fully whole plain single own smooth strong
  therefore thus hence accordingly close iso sold designated labelled labeled listed known would as
  good fully full-blown bare likewise marked should anywhere somewhere between will must can from then you
  say's chest pleural dialysis feeding introducer spinal suction three-way has have least packet packets box boxes
  usp ep same what says goes by under talking looking speaking
  and = ≈ ( , : — – - ~ + as near enough well say shaft barrel`.split(/\s+/),
);
export const MEASURE_AFTER = new Set(
  'across wide thick outer outside od o.d diameter round inner inside bore id i.d'.split(' '),
);
export const LENGTH_AFTER = new Set(
  'long length deep apart above below from of away high tall proximal distal margin margins bite bites'.split(
    ' ',
  ),
);
/** What a length is often said of, and no device is. */
export const HOLES =
  /^(?:holes?|openings?|tracts?|tracks?|strictures?|wounds?|incisions?|cuts?|veins?|vessels?|arter(?:y|ies)|ducts?|urethras?|defects?|ports?|gaps?|tunnels?|punctures?|stab|slits?|stones?|clots?|meatus)$/;
/** Words that bring in something else. */
export const NEVER = new Set([
  'and',
  'than',
  'but',
  'not',
  'while',
  'whereas',
  'if',
  'when',
  ';',
  'unlike',
  'without',
  'needs',
  'takes',
  'goes',
  'each',
  'apiece',
  'accepts',
  'fits',
]);

export const idle = (item: Item) =>
  IDLE.has(item.word) || EQUAL.has(item.word) || item.deviceNoun === true || item.colour !== undefined;
export const phrase = (item: Item) => item.kind === 'word' && !item.magnitude && !NEVER.has(item.word);

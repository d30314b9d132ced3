/** Everyday words of flow: what runs, how it is said to run, and what stands in its way. One idea a pattern. */

/** What runs through a needle or a tube. */
export const FLUID =
  /^(?:fluids?|liquids?|blood|saline|water|urine|litres?|liters?|bags?|units?|volumes?|mls?|millilit(?:re|er)s?|contrast|dye|plasma|infusions?|transfusions?|crystalloids?|colloids?|bolus|boluses|drips?|csf|pus|gas|air|oxygen|aspirates?|samples?|feeds?|antibiotics?|stream|drops?|clots?|effusion|solution|medium|glucose|dextrose|medicine|vaccine|drugs?|local|steroid|milk|syringes?|syringeful|bottles?|pint|pints|secretions|sputum|mucus|debris|clot)$/;

/** Verbs of what runs and of who lets it run. */
export const RUNS =
  /^(?:flow(?:s|ed|ing)?|run(?:s|ning)?|ran|empt(?:y|ies|ied|ying)|drain(?:s|ed|ing)?|deliver(?:s|ed|ing)?|infus(?:e|es|ed|ing)|transfus(?:e|es|ed|ing)|pour(?:s|ed|ing)?|pass(?:es|ed|ing)?|lets?|letting|carr(?:y|ies|ied|ying)|drip(?:s|ped|ping)?|fill(?:s|ed|ing)?|aspirat(?:e|es|ed|ing)|flush(?:es|ed|ing)?|inject(?:s|ed|ing|ion)?|draw(?:s|n|ing)?|drew|suck(?:s|ed|ing)?|pump(?:s|ed|ing)?|push(?:es|ed|ing)?|squirt(?:s|ed|ing)?|trickl(?:e|es|ed|ing)|irrigat(?:e|es|ed|ing)|wash(?:es|ed|ing)?|breath(?:e|es|ing)?|giv(?:e|es|ing)|gets?|getting|goes|going|comes?|coming|finish(?:es|ed|ing)?|moves?|shift(?:s|ed|ing)?|admits?|allows?|collect(?:s|ed|ing)?|yields?|through|throughput|bleeds?|bleeding)$/;

/** Nouns of which more is more flow. */
export const FLOWING =
  /^(?:flows?|flow-rate|flowrate|rates?|speed|throughput|outflow|inflow|output|yield|drainage|delivery|stream|return|flashback|washout)$/;

/** Nouns of which more is less flow. */
export const HINDERING =
  /^(?:resistance|drag|back-pressure|backpressure|effort|force|push|pushing|pressure|thumb|squeeze|squeezing|work|time|minutes?|seconds?|patience|muscle|suction|pull|pulling|strength|elbow)$/;

/** Where a hand or a breath feels the resistance. */
export const FELT =
  /^(?:plungers?|syringes?|thumbs?|inject(?:s|ed|ing|ions?)?|push(?:es|ed|ing)?|press(?:es|ed|ing)?|squeez(?:e|es|ed|ing)|flush(?:es|ed|ing)?|aspirat(?:e|es|ed|ing|ion)|draw(?:s|n|ing)?|suck(?:s|ed|ing)?|breath(?:s|e|es|ing)?|inspiration|inspiratory|expiration|exhal\w+|inhal\w+|ventilat\w+|wean\w*|depress(?:es|ing)?)$/;

/** A thing put in or through tissue: force and time are then of another kind. */
export const PUTTING_IN =
  /^(?:skin|insert\w*|advanc\w*|tissues?|introduc\w*|punctur\w*|fascia|urethra|prostate|nostrils?|nose|cords?|placed|placing|placement|site|siting|cannulat\w*|intubat\w*|ligament|dura|muscle|tighten\w*|tie|tied|tying|knots?|thread|suture|heal\w*|bend|bends|bending|kinks?|kinking|learn\w*|find|finding|hurts?|pain|painful|comfortable|leak\w*|week|month|year|hand|hands|shift|stock)$/;

/** "Harder to push through": how hard it is. */
export const HARD: ReadonlyMap<string, 1 | -1> = new Map([
  ...['harder', 'stiffer', 'tougher', 'heavier', 'firmer', 'stronger'].map((word) => [word, -1] as const),
  ...['easier', 'lighter', 'softer', 'gentler'].map((word) => [word, 1] as const),
]);

/** How much of something: the sign is that of the amount. */
export const AMOUNTS: ReadonlyMap<string, 1 | -1> = new Map([
  ...['more', 'greater', 'bigger', 'larger', 'higher', 'better', 'extra', 'fuller'].map(
    (word) => [word, 1] as const,
  ),
  ...['less', 'fewer', 'smaller', 'lower', 'lesser', 'worse', 'poorer'].map((word) => [word, -1] as const),
]);

/** When something is done: sooner is faster. */
export const TIMES: ReadonlyMap<string, 1 | -1> = new Map([
  ...['sooner', 'earlier', 'shorter', 'first'].map((word) => [word, 1] as const),
  ...['later', 'longer', 'last'].map((word) => [word, -1] as const),
]);

/** How it goes: "aspirates more readily". */
export const EASE = /^(?:easily|readily|freely|smoothly|quickly|rapidly|briskly|swiftly|happily|willingly)$/;
export const UNEASE = /^(?:slowly|sluggishly|reluctantly|gradually)$/;

/** A share or a multiple of something: "half the time", "twice as much". */
export const SHARES: ReadonlyMap<string, 1 | -1> = new Map([
  ...['twice', 'double', 'treble', 'triple', 'thrice', 'times'].map((word) => [word, 1] as const),
  ...['half', 'quarter', 'fraction', 'third'].map((word) => [word, -1] as const),
]);

/** The same after "will" and "to". */
export const RAISE: ReadonlyMap<string, 1 | -1> = new Map([
  ...['speed', 'raise', 'increase', 'boost', 'double', 'treble', 'improve'].map((word) => [word, 1] as const),
  ...['slow', 'lower', 'reduce', 'cut', 'halve', 'limit', 'restrict'].map((word) => [word, -1] as const),
]);

/** Verbs that raise or lower a flow, or that a flow does. */
export const RAISES: ReadonlyMap<string, 1 | -1> = new Map([
  ...`increases raises boosts improves doubles trebles triples quadruples multiplies lifts rises climbs grows speeds speeded sped quickens
  hastens increased raised doubled rose shortens shortened`
    .split(/\s+/)
    .map((word) => [word, 1] as const),
  ...`decreases reduces lowers cuts halves lessens limits restricts throttles falls drops shrinks slows slowed retards decreased reduced
  halved fell dropped impedes lengthens lengthened prolongs prolonged`
    .split(/\s+/)
    .map((word) => [word, -1] as const),
]);

/** With one of these more or less may be said to run. */
export const FLOW_DEGREES =
  /^(?:more|less|fewer|greater|bigger|larger|smaller|higher|lower|lesser|better|worse|poorer|extra|sooner|earlier|later|longer|shorter|harder|stiffer|tougher|heavier|firmer|easier|lighter|softer|gentler|faster|quicker|slower|swifter|brisker|speedier|long|twice|times|double|half|speed|slow|halve|cut|reduce|raise|increase|quarter|fraction|third|quickly|slowly|below|above|exceeds|best|fastest|quickest|slowest|most|least|soonest|increases|raises|boosts|improves|doubles|trebles|triples|quadruples|multiplies|lifts|rises|climbs|grows|speeds|speeded|sped|quickens|hastens|increased|raised|doubled|rose|decreases|reduces|lowers|cuts|halves|lessens|limits|restricts|throttles|falls|drops|shrinks|slows|slowed|retards|decreased|reduced|halved|fell|dropped|impedes|shortens|shortened|lengthens|lengthened|prolongs|prolonged|first|last|fast|quick|rapid)$/;

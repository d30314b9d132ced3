/** What stops the loose reading of a size and its measure, and what speaks for it. One idea a list. */

/** Words that bring in another size, deny, compare, or say that one thing goes through another. */
export const OPERATORS =
  /^(?:[;:.!?×*"“”]|not|never|no|nor|neither|nothing|none|cannot|hardly|\w+n't|without|instead|rather|unlike|than|if|unless|whether|except|but|while|whereas|though|although|versus|vs|or|through|into|inside|past|via|onto|around|along|behind|beside|between|against|within|beyond|above|below|per|each|every|plus|minus|long|deep|length|depth|apart|away|fits?|fitted|takes?|took|accepts?|admits?|passes|passed|needs?|needed|requires?|holds?|allows?|another|other|others|next|different|gaps?|differences?|differs?|steps?|times|twice|double[ds]?|doubling|tripl(?:e[ds]?|ing)|trebl(?:e[ds]?|ing)|halv(?:e[ds]?|ing)|sheaths?|introducers?|guiding|once|before|after|until|pressure|stretch(?:es|ed)?|swells?|swollen|dilat(?:e|es|ed|or|ors)|changes?|changed|replaces?|replaced|instead|followed|formerly|previously|used|until|up|wall|walls|cuff|cuffs|balloon|balloons|tips?|hubs?|eyes?|bevels?|handles?|flanges?|funnels?|stylets?|wings?|tails?|loops?|knots?|coils?|pigtail's|bites?|margins?|edges?|space|spaced|room|marks?|marked|insert(?:ed)?|advance[ds]?|withdraw[ns]?|pull(?:ed)?|push(?:ed)?|trim(?:med)?|slack|skin|fat|lumen|lumens|channels?|radius)$/;

/** What a length is said of that is no device. */
export const OWNERS =
  /^(?:holes?|openings?|tracts?|tracks?|strictures?|wounds?|incisions?|cuts?|nicks?|scars?|veins?|vessels?|arter(?:y|ies)|ducts?|urethras?|ureters?|meatus|tracheas?|airways?|windpipes?|defects?|ports?|gaps?|tunnels?|punctures?|stabs?|slits?|stones?|polyps?|lesions?|tumou?rs?|masses|mass|cysts?|nodules?|ulcers?|abscess(?:es)?|collections?|effusions?|pneumothorax|pupils?|nails?|nostrils?|nares|canals?|aneurysms?|grafts?|meshes|mesh|patch(?:es)?|swellings?|bruises?|haematomas?|rings?|rims?|pockets?|layers?|bands?|margins?|bites?|spaces?|walls?|gauze|dressings?|tapes?|blades?|trocars?|scopes?|\w+oscopes?|gaps?|prostates?|cervix|os|stents?|balloons?|cuffs?|tips?|hubs?|eyes?)$/;

/** Says that a length is measured across. */
export const ACROSS =
  /^(?:across|wide|thick|diameters?|width|thickness|calib(?:re|er)|od|broad|fat|outside|outer|external(?:ly)?|callipers?|calipers?|micromet(?:er|re)|girth|section|cross-section|measur(?:es|ed|ing))$/;

/** "6 mm of plastic": what the thing is made of, or the thing. */
export const STUFF =
  /^(?:plastic|tube|tubing|catheter|drain|steel|metal|rubber|silicone|latex|polyurethane|pvc|line|wire|thread|needle|hose|pipe|suture|silk|nylon|hardware|foley|drainpipe|material|stuff|kit)$/;

/** "from side to side". */
export const SIDES =
  /\b(?:side|edge|wall|rim|end|one side|one wall|one edge) to (?:side|edge|wall|rim|the other)\b/;

/** Sets what follows equal to what stands before. */
export const SETS =
  /(?:^| )(?:is|are|was|be|being|=|≈|~|→|->|⇒|equals?|means?|meaning|makes?|making|measures?|measuring|comes? (?:to|out|up|in)|came (?:to|out)|works? out|gives?|giving|gets?|get you|runs? to|amounts? to|boils down to|converts? to|translates? (?:to|into|as)|corresponds? to|turns? (?:into|out)|becomes?|reads?|reading|says|covers?|spans?|call(?:ed)? it|calls? for|say|it's|that's|that'll be|stands? for|equivalent(?: of| to)?|same as|i\.e|namely|in other words|put plainly|counts? as|leaves?|takes? up|fills?|occup(?:y|ies)|lands? (?:you )?(?:on|at)|arrive at|have|has|you've got|got)(?: (?:you|me|us|it|out|at|on|as|to|in|near|nearly|about|around|roughly|approximately|some|only|just|almost|barely|exactly|precisely|still|already|always|also|therefore|thus|hence|then|over|under|a|an|the|good|full|bare|mere|be|clear|shade|touch|hair|bit|little|very|close|nominal(?:ly)?|only|total|whole|fat|solid|something|like|round|,|\()){0,6}$/;

/** Nouns that may stand as the subject of a measure without owning it. */
export const NEUTRAL =
  /^(?:itself|themselves|it|that|this|which|they|them|these|those|he|she|one|ones|thing|something|anything|what|number|figure|answer|result|size|sizes|width|diameter|thickness|outside|measure|measurement|reading|value|sum|conversion|label|labels|box|packet|pack|sleeve|package|chart|table|calib(?:re|er)|girth|equivalent|total|rule|division|arithmetic|maths|math|calculation|metric|gauge|french|millimetres|calipers?|callipers?|everything|all|you|we|i|there|here|so|then|body|item|device|product|fellow|brother|sister|cousin|latter|former|first|second|last|lot|same|usual|standard|ordinary|adult|big|small|large|little)$/;

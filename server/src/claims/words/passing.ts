/** Words for one thing going through, into or over another. */

/** "goes through", "is threaded down": the thing that moves is the subject. */
export const GOING: ReadonlySet<string> = new Set(
  `go goes going went pass passes passed passing fit fits fitted slide slides slid slip slips slipped thread threads
  threaded threading sliding pushing advancing slipping inserting running railroading run runs advance advances advanced push pushes pushed put place placed insert inserted introduce introduced
  feed feeds fed feeding ride rides lead railroad railroads railroaded squeeze squeezes come comes drop drops dropped load loads loaded`.split(
    /\s+/,
  ),
);

/** "takes a 0.035 in wire": the thing with the hole is the subject. */
export const TAKING: ReadonlySet<string> = new Set(
  'lets let allows take takes accept accepts admit admits accommodate accommodates swallow swallows'.split(
    ' ',
  ),
);

export const THROUGH: ReadonlySet<string> = new Set([
  'through',
  'down',
  'inside',
  'into',
  'within',
  'thru',
  'via',
]);
export const OVER: ReadonlySet<string> = new Set(['over']);

/** Words for the way within something that mean it only beside a word of going. */
export const ALONG: ReadonlySet<string> = new Set(['along', 'in']);

/** More words with the hole as their subject: "carries", "has room for". */
export const HOLDING: ReadonlySet<string> = new Set(
  'carry carries receive receives hold holds house houses fit fits suit suits guides'.split(' '),
);

/** "An 8 Fr is happy in a 7 Fr sheath": said of either, by what each is. */
export const FITTING: ReadonlySet<string> = new Set(
  'happy comfortable snug traverse traverses passes'.split(' '),
);

/** Things that go through others. */
export const PASSERS: ReadonlySet<string> = new Set(
  `wire wires guidewire guidewires k-wire k-wires stylet stylets stylette bougie bougies scope scopes bronchoscope fibrescope fiberscope fibroscope
  endoscope ureteroscope forceps pin pins shaft
  balloon balloons stent stents dilator dilators probe probes coil coils catheter catheters microcatheter device devices`.split(
    /\s+/,
  ),
);

/** Things that only have a hole of the size written on them. */
export const HOLES: ReadonlySet<string> = new Set(
  'channel channels lumen lumens lumina bore bores sheath sheaths introducer introducers sleeve sleeves'.split(
    ' ',
  ),
);

/** Words that may stand between a size and the verb or the preposition without changing what goes where. */
export const ON_THE_WAY: ReadonlySet<string> = new Set(
  `will can could should may might must would does do is are be a an the that this our its any every even only just still
  too also easily comfortably happily quite well straight right all therefore thus then instead hence nicely safely readily freely loosely without with difficulty struggle snugly neatly fine
  wire wires guidewire guidewires guide catheter catheters needle needles cannula cannulas cannulae tube tubes probe scope
  dilator dilators stent stents sheath sheaths introducer introducers drain drains inch standard ordinary plain angled
  hydrophilic access micropuncture finder spinal introducing bone biopsy dental diagnostic guiding channel lumen pigtail up of to in stiff
  normal normally usually simply both one coil device thin steel hollow bore fine tuohy epidural chest feeding urinary pigtail suction ureteral ureteric biliary balloon working`.split(
    /\s+/,
  ),
);

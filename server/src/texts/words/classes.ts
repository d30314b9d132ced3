/** Classes of sizes and sizes as taught for a kind of patient. A label completes "18 G ist …". */
export const CLASSES: Readonly<Record<string, string>> = {
  'large-bore': 'großlumig',
  'small-bore': 'kleinlumig',
  'fine-bore': 'feinlumig',
  'wide-bore': 'weitlumig',
  microsurgical: 'mikrochirurgisch',
  'a fine suture': 'ein feiner Faden',
  'a heavy suture': 'ein kräftiger Faden',
  'a fine needle': 'eine feine Kanüle',
  'a thick needle': 'eine dicke Kanüle',
  'Large-bore IV access is 14 to 16 G; some texts include 18 G, none a thinner one':
    'Ein großlumiger venöser Zugang hat 14 bis 16 G; manche Texte zählen 18 G dazu, keiner eine dünnere Größe',
  '14 and 16 G are large-bore, at the wide end of the scale':
    '14 und 16 G sind großlumig, am weiten Ende der Skala',
  'Large-bore chest drains are more than 20 Fr; 14 Fr and less is small-bore':
    'Großlumige Thoraxdrainagen haben mehr als 20 Fr; 14 Fr und weniger ist kleinlumig',
  'Small-bore chest drains are 14 Fr or less': 'Kleinlumige Thoraxdrainagen haben 14 Fr oder weniger',
  'Fine-bore feeding tubes are 6 to 12 Fr': 'Feinlumige Ernährungssonden haben 6 bis 12 Fr',
  'Fine-bore feeding tubes are 6 to 12 Fr; wide-bore ones, for drainage, are 14 to 18 Fr':
    'Feinlumige Ernährungssonden haben 6 bis 12 Fr, weitlumige zur Ableitung 14 bis 18 Fr',
  'Small-bore tubes are 14 Fr or less': 'Kleinlumige Sonden und Drainagen haben höchstens 14 Fr',
  'Fine-bore tubes are 12 Fr or less': 'Feinlumige Sonden haben höchstens 12 Fr',
  'Microsurgical sutures are 8-0 and finer': 'Mikrochirurgische Fäden haben 8-0 und feiner',
  'Fine sutures are those with many zeros, 5-0 and finer; 0 and the whole numbers are the heavy end':
    'Feine Fäden sind die mit vielen Nullen, 5-0 und feiner; 0 und die ganzen Zahlen sind das kräftige Ende',
  'Heavy sutures are 0 and the whole numbers; more zeros are finer':
    'Kräftige Fäden sind 0 und die ganzen Zahlen; mehr Nullen heißt feiner',
  'Fine needles have high gauge numbers, 25 G and up; 16 G is at the wide end':
    'Feine Kanülen haben hohe Gauge-Zahlen, ab 25 G; 16 G liegt am weiten Ende',
  'Thick needles have low gauge numbers; 26 G and up are fine':
    'Dicke Kanülen haben niedrige Gauge-Zahlen; ab 26 G sind sie fein',
  'Tracheal tubes for adults are taught as 7.0 to 9.0 mm; 5.0 mm and less are sizes for children':
    'Für Erwachsene werden Trachealtuben von 7,0 bis 9,0 mm gelehrt; 5,0 mm und weniger sind Größen für Kinder',
  'Tracheal tubes of 6.0 mm and more are sizes for large children and adults':
    'Trachealtuben ab 6,0 mm sind Größen für große Kinder und Erwachsene',
  'Urethral catheters for adults are taught as 12 to 18 Fr, and 20 to 24 Fr for irrigation':
    'Für Erwachsene werden Blasenkatheter von 12 bis 18 Fr gelehrt, zur Spülung 20 bis 24 Fr',
  'Urethral catheters for children are taught as 6 to 10 Fr':
    'Für Kinder werden Blasenkatheter von 6 bis 10 Fr gelehrt',
  'For bleeding and resuscitation 14 to 16 G is taught, 18 G by some':
    'Bei Blutung und Reanimation werden 14 bis 16 G gelehrt, von manchen 18 G',
  'For infants 24 G is taught, 22 G for children': 'Für Säuglinge werden 24 G gelehrt, für Kinder 22 G',
  'Spinal needles are taught as 22 to 27 G': 'Für Spinalnadeln werden 22 bis 27 G gelehrt',
  'a small cannula': 'eine kleine Venenverweilkanüle',
  'a big cannula': 'eine große Venenverweilkanüle',
  '14 and 16 G are at the wide end of the scale': '14 und 16 G liegen am weiten Ende der Skala',
  'The wide cannulae and needles have the low gauge numbers; 22 G and up are fine':
    'Weite Venenverweilkanülen und Kanülen haben die niedrigen Gauge-Zahlen; ab 22 G sind sie fein',
  'Vaccines are given with needles of 22 to 27 G': 'Impfstoffe werden mit Kanülen von 22 bis 27 G gegeben',
  'Fine-bore feeding tubes for adults are 6 to 12 Fr':
    'Dünne Ernährungssonden für Erwachsene haben 6 bis 12 Fr',
  'Pen needles for insulin are 29 to 34 G': 'Pen-Kanülen für Insulin haben 29 bis 34 G',
  'an adult size': 'eine Größe für Erwachsene',
  'Three-way catheters for irrigation are taught as 20 to 24 Fr':
    'Für Spülkatheter mit drei Wegen werden 20 bis 24 Fr gelehrt',
  'Arterial lines are taught as 20 G at the wrist and 18 G in the groin, finer in children':
    'Für arterielle Zugänge werden 20 G am Handgelenk und 18 G in der Leiste gelehrt, bei Kindern feinere',
  'Fistula needles for dialysis are 14 to 17 G': 'Fistelkanülen für die Dialyse haben 14 bis 17 G',
  'Dialysis lines for adults are 11.5 to 16 Fr': 'Dialysekatheter für Erwachsene haben 11,5 bis 16 Charrière',
  'Epidural needles are 16 to 18 G in adults': 'Epiduralkanülen haben bei Erwachsenen 16 bis 18 G',
  'Injections into the muscle are taught with 22 to 25 G':
    'Für Injektionen in den Muskel werden 22 bis 25 G gelehrt',
  'Injections under the skin are taught with 23 to 27 G':
    'Für Injektionen unter die Haut werden 23 bis 27 G gelehrt',
  'Stomach tubes for decompression in adults are taught as 14 to 18 Fr':
    'Für Magensonden zur Entlastung werden bei Erwachsenen 14 bis 18 Fr gelehrt',
  'For a haemothorax after trauma chest drains of 28 to 32 Fr are taught, wider ones in older texts':
    'Für einen Hämatothorax nach Trauma werden Thoraxdrainagen von 28 bis 32 Fr gelehrt, in älteren Texten weitere',
  'Inside the mouth 3-0 to 5-0 is taught': 'Im Mund wird 3-0 bis 5-0 gelehrt',
  'On the face 5-0 to 6-0 is taught': 'Im Gesicht wird 5-0 bis 6-0 gelehrt',
  'For the cornea 10-0 is taught': 'Für die Hornhaut wird 10-0 gelehrt',
  'For the abdominal wall 0 and 1 are taught': 'Für die Bauchwand werden 0 und 1 gelehrt',
};

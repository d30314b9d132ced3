/** What to mind with a value. */
export const CAUTIONS: Readonly<Record<string, string>> = {
  'gut of the same size is one step thicker': 'Catgut gleicher Stärke ist eine Stufe dicker',
  'some absorbable monofilaments are thicker than their row':
    'manche resorbierbaren monofilen Fäden sind dicker als ihre Zeile',
  'a needle and an IV catheter of the same gauge differ':
    'eine Kanüle und eine Venenverweilkanüle mit gleichem Gauge sind verschieden dick',
  'the scales differ: give the diameter in mm':
    'die Skalen weichen voneinander ab: besser den Durchmesser in mm angeben',
  'the bore depends on the wall': 'die lichte Weite hängt von der Wand ab',
  'the sheath itself is about 2 Fr thicker outside': 'die Schleuse selbst ist außen etwa 2 Fr dicker',
  'the outside depends on the make': 'das Außenmaß hängt vom Fabrikat ab',
  'upper limit 0.339 mm in USP, 0.349 mm in the European Pharmacopoeia':
    'Obergrenze 0,339 mm in der USP, 0,349 mm im Europäischen Arzneibuch',
  'sizes 3 and 4 share one row, metric 6': 'die Stärken 3 und 4 teilen sich eine Zeile, metrisch 6',
  'Teaching aid, not advice on a patient. Read the label of the device; follow local codes and licensed practice.':
    'Lehrmittel, kein Rat zu einem Patienten. Lesen Sie die Beschriftung des Instruments; halten Sie sich an örtliche Vorschriften und die zugelassene Praxis.',
};

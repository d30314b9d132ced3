/** Why a system does not have a size. */
export const SERIES: Readonly<Record<string, string>> = {
  'USP sizes go by whole numbers and whole counts of zeros':
    'USP-Fadenstärken sind ganze Zahlen oder eine ganze Anzahl Nullen',
  'USP sizes end at 12-0, the finest': 'die USP-Fadenstärken enden bei 12-0, der feinsten',
  'USP sizes end at 10, the thickest': 'die USP-Fadenstärken enden bei 10, der dicksten',
  'USP runs from 12-0 to 10': 'USP-Fadenstärken reichen von 12-0 bis 10',
  'metric numbers are 0.1–0.5, 0.7, 1, 1.5, 2, 2.5, 3, 3.5 and whole from 4':
    'metrische Fadenstärken sind 0,1–0,5; 0,7; 1; 1,5; 2; 2,5; 3; 3,5 und ab 4 ganze Zahlen',
  'needle gauges are whole numbers': 'Gauge-Zahlen von Kanülen sind ganze Zahlen',
  'needle gauges end at 34 G, the finest (ISO 9626)': 'Kanülen enden bei 34 G, der feinsten (ISO 9626)',
  'it is a cannula of ISO 10555-5': 'eine Venenverweilkanüle der ISO 10555-5',
  'fistula needles are made from 14 to 17 G': 'Fistelkanülen gibt es von 14 bis 17 G',
  'spinal needles are made of 22, 25 and 27 G': 'Spinalkanülen gibt es in 22, 25 und 27 G',
  'epidural needles are made of 16, 17 and 18 G': 'Epiduralkanülen gibt es in 16, 17 und 18 G',
  'dental needles are made of 25, 27 and 30 G': 'Dentalkanülen gibt es in 25, 27 und 30 G',
  'pen needles are made from 29 to 34 G': 'Pen-Nadeln gibt es von 29 bis 34 G',
  'winged needles are made of 21, 23 and 25 G': 'Flügelkanülen gibt es in 21, 23 und 25 G',
  'catheters of 3.5, 5 and 7 Fr are made': 'Katheter gibt es auch in 3,5, 5 und 7 Charrière',
  'guidewires are 0.010 to 0.052 in thick; a zero is missing after the point':
    'Führungsdrähte sind 0,010 bis 0,052 Zoll dick; nach dem Komma fehlt eine Null',
  'USP sizes are whole numbers, or a count of zeros before “-0”: 0, 2-0, 3-0':
    'USP-Fadenstärken sind ganze Zahlen oder eine Anzahl Nullen vor „-0“: 0, 2-0, 3-0',
  'tracheal tubes come by half millimetres': 'Trachealtuben gibt es in halben Millimetern',
  'urinary catheters go by whole French numbers': 'Harnkatheter gehen nach ganzen Charrière-Zahlen',
  'the cannulas of ISO 10555-5 are 10, 12, 13, 14, 16, 17, 18, 20, 22, 24 and 26 G':
    'die Venenkanülen der ISO 10555-5 sind 10, 12, 13, 14, 16, 17, 18, 20, 22, 24 und 26 G',
  'gauge and French are numbers above zero': 'Gauge und Charrière sind Zahlen über null',
  'a count of zeros belongs to sutures, not to gauge or French':
    'eine Anzahl Nullen gehört zu Fäden, nicht zu Gauge oder Charrière',
};

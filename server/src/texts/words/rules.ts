/** Rules of conversion: what a text may say (each completes "Hier steht: …."), and what holds. */
export const RULES: Readonly<Record<string, string>> = {
  'French is three times the outer diameter in millimetres: divide French by 3 for millimetres':
    'Charrière ist das Dreifache des Außendurchmessers in Millimetern: Charrière durch 3 ergibt Millimeter',
  'A sheath is sized by what it accepts: its French is the inner diameter, and the outside is larger':
    'Eine Schleuse wird nach dem benannt, was hindurchpasst: Ihre Charrière ist der Innendurchmesser, außen ist sie dicker',
  'A single-lumen tracheal tube is sized by its inner diameter in millimetres':
    'Ein einlumiger Trachealtubus wird nach seinem Innendurchmesser in Millimetern benannt',
  'The usual rule: the French of a suction catheter is at most twice the inner diameter of the tube in millimetres; local practice decides':
    'Die übliche Regel: Die Charrière eines Absaugkatheters ist höchstens das Doppelte des Tubus-Innendurchmessers in Millimetern; es entscheidet die örtliche Praxis',
  'A double-lumen tube is sized in French by its outer diameter, unlike single-lumen tubes':
    'Ein Doppellumentubus wird in Charrière nach seinem Außendurchmesser benannt, anders als einlumige Tuben',
  'Guidewires are named in inches: 0.014 in is 0.36 mm and 0.035 in is 0.89 mm':
    'Führungsdrähte werden in Zoll benannt: 0,014 in sind 0,36 mm und 0,035 in sind 0,89 mm',
  'A thou is a thousandth of an inch, 0.0254 mm': 'Ein Thou ist ein Tausendstel Zoll, 0,0254 mm',
  'Of two cannulas of one gauge the longer flows slower':
    'Von zwei Venenverweilkanülen mit gleichem Gauge hat die längere weniger Durchfluss',
  'Of two cannulas of one length the wider flows faster':
    'Von zwei gleich langen Venenverweilkanülen hat die weitere mehr Durchfluss',
  'millimetres are French divided by 3': 'Millimeter sind Charrière geteilt durch 3',
  'millimetres are French multiplied by 3': 'Millimeter sind Charrière mal 3',
  'French is millimetres multiplied by 3': 'Charrière ist Millimeter mal 3',
  'French is millimetres divided by 3': 'Charrière ist Millimeter geteilt durch 3',
  'millimetres are French divided by a number other than 3':
    'Millimeter sind Charrière geteilt durch eine andere Zahl als 3',
  'French is millimetres multiplied by a number other than 3':
    'Charrière ist Millimeter mal eine andere Zahl als 3',
  'French and millimetres differ by a number added':
    'Charrière und Millimeter unterscheiden sich um eine feste Zahl',
  'French is the circumference in millimetres': 'Charrière ist der Umfang in Millimetern',
  'French is the diameter in millimetres': 'Charrière ist der Durchmesser in Millimetern',
  'French is three times the radius': 'Charrière ist das Dreifache des Radius',
  'French measures the inner diameter': 'Charrière misst den Innendurchmesser',
  'French measures the length': 'Charrière misst die Länge',
  'a tracheal tube is sized by its length': 'ein Trachealtubus wird nach seiner Länge benannt',
  'a double-lumen tube is sized by its inner diameter':
    'ein Doppellumentubus wird nach seinem Innendurchmesser benannt',
  'a double-lumen tube is sized by its outer diameter':
    'ein Doppellumentubus wird nach seinem Außendurchmesser benannt',
  'Needles are sized by gauge; urinary catheters, drains and feeding tubes in French':
    'Nadeln werden nach Gauge benannt; Blasenkatheter, Drainagen und Ernährungssonden in Charrière',
  'needles are sized in French': 'Nadeln werden in Charrière benannt',
  'urinary catheters, drains or feeding tubes are sized by gauge':
    'Blasenkatheter, Drainagen oder Ernährungssonden werden nach Gauge benannt',
  'A pencil-point spinal needle has a closed, rounded tip and its opening on the side':
    'Eine Pencil-Point-Spinalkanüle hat eine geschlossene, runde Spitze und ihre Öffnung an der Seite',
  'a pencil-point needle opens at its side': 'eine Pencil-Point-Kanüle öffnet sich an der Seite',
  'a pencil-point needle opens at its tip or has a cutting bevel':
    'eine Pencil-Point-Kanüle öffnet sich an der Spitze oder hat einen schneidenden Schliff',
  'guidewires are sized in inches': 'Führungsdrähte werden in Zoll benannt',
  'guidewires are sized on another scale': 'Führungsdrähte werden auf einer anderen Skala benannt',
  'the gauge gives the length of a needle': 'das Gauge gibt die Länge einer Kanüle an',
  'Needle gauge gives the outer diameter; length is a number of its own':
    'Das Gauge einer Kanüle gibt den Außendurchmesser an; die Länge ist eine Zahl für sich',
  'the French of a sheath is its outer diameter': 'die Charrière einer Schleuse ist ihr Außendurchmesser',
  'the French of a sheath is its inner diameter': 'die Charrière einer Schleuse ist ihr Innendurchmesser',
  'a tracheal tube is sized by its outer diameter':
    'ein Trachealtubus wird nach seinem Außendurchmesser benannt',
  'a tracheal tube is sized by its inner diameter':
    'ein Trachealtubus wird nach seinem Innendurchmesser benannt',
  'one French is a third of a millimetre': '1 Charrière ist ein Drittelmillimeter',
  'one French is something other than a third of a millimetre':
    '1 Charrière ist etwas anderes als ein Drittelmillimeter',
  'One French is a third of a millimetre': '1 Charrière ist ein Drittelmillimeter',
  'one French is about 1.05 mm around': '1 Charrière hat etwa 1,05 mm Umfang',
  'One French is a third of a millimetre in diameter, about 1.05 mm around':
    '1 Charrière ist ein Drittelmillimeter im Durchmesser, etwa 1,05 mm im Umfang',
  'this is what one French measures around': 'das ist der Umfang von 1 Charrière',
  'an inch is 25.4 mm': 'ein Zoll ist 25,4 mm',
  'An inch is exactly 25.4 mm': 'Ein Zoll ist genau 25,4 mm',
  'an inch is something other than 25.4 mm': 'ein Zoll ist etwas anderes als 25,4 mm',
  'a thou is a thousandth of an inch': 'ein Thou ist ein Tausendstel Zoll',
  'a thou is something other than a thousandth of an inch':
    'ein Thou ist etwas anderes als ein Tausendstel Zoll',
  'a guidewire is a few hundredths of a millimetre thick':
    'ein Führungsdraht ist wenige Hundertstelmillimeter dick',
  'a tracheal tube has its size in French': 'ein Trachealtubus wird in Charrière benannt',
  'A single-lumen tracheal tube is sized by its inner diameter in millimetres, not in French':
    'Ein einlumiger Trachealtubus wird nach seinem Innendurchmesser in Millimetern benannt, nicht in Charrière',
  'a needle has its size in French': 'eine Kanüle wird in Charrière benannt',
  'an intravenous cannula has its size in French': 'eine Venenverweilkanüle wird in Charrière benannt',
  'Intravenous cannulas are sized by gauge: 18 G is 1.3 mm, 18 Fr would be 6 mm':
    'Venenverweilkanülen werden nach Gauge benannt: 18 G sind 1,3 mm, 18 Fr wären 6 mm',
  'Needles are sized by gauge: 19 G is 1.1 mm, 19 Fr would be 6.3 mm':
    'Kanülen werden nach Gauge benannt: 19 G sind 1,1 mm, 19 Fr wären 6,3 mm',
  'a bladder or stomach catheter has its size in gauge':
    'ein Blasenkatheter oder eine Magensonde wird in Gauge benannt',
  'Urinary and nasogastric catheters are sized in French, not in gauge':
    'Blasenkatheter und Magensonden werden in Charrière benannt, nicht in Gauge',
  'two ways to write one size are two sizes': 'zwei Schreibweisen einer Stärke sind zwei Stärken',
  '2-0, 2/0 and 00 are one size; so are 0, 1-0 and 1/0':
    '2-0, 2/0 und 00 sind eine Stärke, ebenso 0, 1-0 und 1/0',
  'one number is gauge and French at once': 'eine Zahl ist Gauge und Charrière zugleich',
  'Gauge and French are different scales: 16 G is 1.6 mm, 16 Fr is 5.3 mm':
    'Gauge und Charrière sind verschiedene Skalen: 16 G sind 1,6 mm, 16 Fr sind 5,3 mm',
  'the figure before “-0” counts the zeros': 'die Ziffer vor „-0“ zählt die Nullen',
  'The figure before “-0” counts the zeros: 2-0 is 00': 'Die Ziffer vor „-0“ zählt die Nullen: 2-0 ist 00',
  'these two threads are so many sizes apart': 'diese beiden Fäden liegen so viele Stärken auseinander',
  'USP sizes run 2, 1, 0, 2-0, 3-0, 4-0 and so on, each of them one step':
    'Die USP-Fadenstärken laufen 2, 1, 0, 2-0, 3-0, 4-0 und so weiter, jede ist eine Stufe',
  'the size of a suture is the size of its needle': 'die Stärke eines Fadens ist die Größe seiner Nadel',
  'The USP size is the diameter of the thread; the needle is described apart from it':
    'Die USP-Stärke ist der Durchmesser des Fadens; die Nadel wird gesondert beschrieben',
  'the figure before “-0” is not the number of zeros': 'die Ziffer vor „-0“ ist nicht die Anzahl der Nullen',
  'a longer cannula flows slower': 'eine längere Venenverweilkanüle hat weniger Durchfluss',
  'several cannulas together are set against one':
    'mehrere Venenverweilkanülen zusammen werden mit einer verglichen',
  'By published flows of single cannulas': 'Nach veröffentlichten Durchflüssen einzelner Venenverweilkanülen',
  'more pressure makes the flow faster': 'mehr Druck macht den Durchfluss größer',
  'more pressure makes the flow slower': 'mehr Druck macht den Durchfluss kleiner',
  'Through one and the same cannula more pressure drives more flow':
    'Durch ein und dieselbe Venenverweilkanüle treibt mehr Druck mehr Durchfluss',
  'a higher bag runs faster': 'ein höher hängender Beutel läuft schneller',
  'a higher bag runs slower': 'ein höher hängender Beutel läuft langsamer',
  'The higher the bag hangs, the faster it runs': 'Je höher der Beutel hängt, desto schneller läuft er',
  'a thicker or colder fluid runs slower': 'eine dickere oder kältere Flüssigkeit läuft langsamer',
  'a thicker or colder fluid runs faster': 'eine dickere oder kältere Flüssigkeit läuft schneller',
  'Cold and thick fluids run slower than warm and thin ones':
    'Kalte und dicke Flüssigkeiten laufen langsamer als warme und dünne',
  'a narrowed line runs slower': 'eine verengte Leitung läuft langsamer',
  'a narrowed line runs faster': 'eine verengte Leitung läuft schneller',
  'A kink, a clamp or a clot slows the flow':
    'Ein Knick, eine Klemme oder ein Gerinnsel bremst den Durchfluss',
  'the narrowest part limits the flow': 'die engste Stelle begrenzt den Durchfluss',
  'the widest part limits the flow': 'die weiteste Stelle begrenzt den Durchfluss',
  'The narrowest part of a line limits the flow': 'Die engste Stelle einer Leitung begrenzt den Durchfluss',
  'this volume runs in that time at that rate':
    'dieses Volumen läuft bei diesem Durchfluss in dieser Zeit ein',
  'The time to run a volume in is the volume divided by the rate':
    'Die Zeit für ein Volumen ist das Volumen geteilt durch den Durchfluss',
  'a longer cannula flows faster': 'eine längere Venenverweilkanüle hat mehr Durchfluss',
  'a wider cannula flows faster': 'eine Venenverweilkanüle mit größerer lichter Weite hat mehr Durchfluss',
  'a wider cannula flows slower': 'eine Venenverweilkanüle mit größerer lichter Weite hat weniger Durchfluss',
  'gauge measures the inner diameter': 'Gauge misst den Innendurchmesser',
  'Needle gauge goes by the outer diameter; the bore depends on the wall':
    'Das Gauge einer Kanüle richtet sich nach dem Außendurchmesser; die lichte Weite hängt von der Wand ab',
  'gauge numbers are equal steps of width': 'Gauge-Zahlen sind gleiche Stufen der Weite',
  'Gauge numbers come from a table and their steps are not equal: 14 G is about 2.11 mm and 28 G about 0.36 mm':
    'Gauge-Zahlen stammen aus einer Tabelle mit ungleichen Stufen: 14 G sind etwa 2,11 mm, 28 G etwa 0,36 mm',
  'a child’s tube is a quarter of the age plus 4 uncuffed, plus 3.5 cuffed':
    'der Tubus eines Kindes ist ein Viertel des Alters plus 4 ohne Cuff, plus 3,5 mit Cuff',
  'A first estimate for a child’s tube is age/4 + 4 uncuffed, age/4 + 3.5 cuffed; local practice decides':
    'Eine erste Schätzung für den Tubus eines Kindes ist Alter/4 + 4 ohne Cuff, Alter/4 + 3,5 mit Cuff; es entscheidet die örtliche Praxis',
  'a child’s tube goes by another sum of the age':
    'der Tubus eines Kindes folgt einer anderen Rechnung mit dem Alter',
  'a suction catheter is at most twice the tube': 'ein Absaugkatheter ist höchstens das Doppelte des Tubus',
  'this suction catheter suits this tube': 'dieser Absaugkatheter passt zu diesem Tubus',
  'a suction catheter goes by another rule': 'ein Absaugkatheter folgt einer anderen Regel',
  'the cross-sections stand in this ratio': 'die Querschnitte stehen in diesem Verhältnis',
  'The cross-section goes with the square of the diameter':
    'Der Querschnitt wächst mit dem Quadrat des Durchmessers',
  'gut is the thicker thread in one USP size': 'Catgut ist in ein und derselben USP-Stärke der dickere Faden',
  'gut is as thick as other threads in one USP size':
    'Catgut ist in ein und derselben USP-Stärke so dick wie andere Fäden',
  'gut is the thinner thread in one USP size': 'Catgut ist in ein und derselben USP-Stärke der dünnere Faden',
  'In one USP size gut is a step thicker than other threads: 3-0 gut is metric 3, 3-0 silk or synthetic metric 2':
    'In ein und derselben USP-Stärke ist Catgut eine Stufe dicker als andere Fäden: 3-0 Catgut ist metric 3, 3-0 Seide oder synthetisch metric 2',
  'the widths stand in this ratio': 'die Durchmesser stehen in diesem Verhältnis',
  'These numbers are diameters, and their ratio is another':
    'Diese Zahlen sind Durchmesser, und ihr Verhältnis ist ein anderes',
  'by the law the flows stand in this ratio': 'nach dem Gesetz stehen die Durchflüsse in diesem Verhältnis',
  'By the law of narrow pipes the flow goes with the fourth power of the bore':
    'Nach dem Gesetz für enge Rohre wächst der Durchfluss mit der vierten Potenz der lichten Weite',
  'the flow changes about as much as the bore':
    'der Durchfluss ändert sich etwa so stark wie die lichte Weite',
  'The flow changes far more than the bore; by the law of narrow pipes with its fourth power':
    'Der Durchfluss ändert sich weit mehr als die lichte Weite; nach dem Gesetz für enge Rohre mit ihrer vierten Potenz',
  'this tube comes out of the rule given': 'dieser Tubus ergibt sich aus der genannten Regel',
  'By the rule as the text gives it the sum is another':
    'Nach der Regel, wie der Text sie nennt, ergibt sich etwas anderes',
  'this catheter comes out of twice the tube': 'dieser Katheter ergibt sich aus dem Doppelten des Tubus',
  'for one child the cuffed tube is the smaller': 'für ein Kind ist der Tubus mit Cuff der kleinere',
  'for one child the cuffed tube is the larger': 'für ein Kind ist der Tubus mit Cuff der größere',
  'The cuff takes room: for one child a cuffed tube is half a size smaller than an uncuffed one':
    'Der Cuff braucht Platz: Für ein Kind ist der Tubus mit Cuff eine halbe Größe kleiner als der ohne',
  'Twice the tube, as the text has it, is less':
    'Das Doppelte des Tubus, wie der Text ihn nennt, ist weniger',
  'one colour is one gauge on needles and on IV cannulas':
    'eine Farbe ist bei Kanülen und bei Venenverweilkanülen dasselbe Gauge',
  'Needles and IV cannulas have a colour code each, and the two differ: pink is an 18 G needle and a 20 G cannula':
    'Kanülen und Venenverweilkanülen haben je einen eigenen Farbcode: Rosa ist eine Kanüle mit 18 G und eine Venenverweilkanüle mit 20 G',
  'needle gauge and American Wire Gauge give the same diameters':
    'Kanülen-Gauge und American Wire Gauge ergeben dieselben Durchmesser',
  'Needle gauge has a table of its own: an 18 G needle is about 1.27 mm, 18 AWG is 1.02 mm':
    'Das Kanülen-Gauge hat eine eigene Tabelle: Eine Kanüle mit 18 G ist etwa 1,27 mm dick, 18 AWG sind 1,02 mm',
  'the gauge is the diameter in a unit of length': 'das Gauge ist der Durchmesser in einer Längeneinheit',
  'Gauge numbers come from a table and rise as needles get thinner: 18 G is about 1.27 mm, 25 G about 0.5 mm':
    'Gauge-Zahlen stammen aus einer Tabelle und steigen, je dünner die Kanüle wird: 18 G sind etwa 1,27 mm, 25 G etwa 0,5 mm',
  'a gauge is one over the diameter': 'das Gauge ist eins geteilt durch den Durchmesser',
  'Gauge numbers come from a table: 20 G is about 0.036 in, not 1/20 in':
    'Gauge-Zahlen stammen aus einer Tabelle: 20 G sind etwa 0,036 in, nicht 1/20 in',
  'the metric number is the diameter in tenths of a millimetre':
    'die metrische Fadenstärke ist der Durchmesser in Zehntelmillimetern',
  'The metric number is the least diameter in tenths of a millimetre':
    'Die metrische Fadenstärke ist der Mindestdurchmesser in Zehntelmillimetern',
  'the metric number is the diameter in another unit':
    'die metrische Fadenstärke ist der Durchmesser in einer anderen Einheit',
  'a sum that does not come out': 'eine Rechnung, die nicht aufgeht',
  'The sum as it is written comes to something else': 'Die Rechnung, wie sie dasteht, ergibt etwas anderes',
  'this size is the next one below or above what comes out':
    'diese Größe ist die nächste unter oder über dem Ergebnis',
  'The size lies on the other side of what comes out':
    'Die Größe liegt auf der anderen Seite des Ergebnisses',
  'the several names of one scale are several sizes': 'die Namen einer Skala sind mehrere Größen',
  'French, Charrière, Fr, Ch and FG are one scale': 'Charrière, Fr, Ch und FG sind eine Skala',
  'a short form of French stands for something else': 'eine Abkürzung für Charrière steht für etwas anderes',
  'Fr, F, FG and Ch stand for French, which is also called Charrière':
    'Fr, F, FG und Ch stehen für Charrière',
  'the G of a needle stands for something else': 'das G einer Nadel steht für etwas anderes',
  'G behind the number of a needle or cannula stands for gauge':
    'Das G hinter der Zahl einer Nadel oder Kanüle steht für Gauge',
  'USP stands for something else': 'USP steht für etwas anderes',
  'USP stands for the United States Pharmacopeia, EP for the European Pharmacopoeia':
    'USP steht für das Arzneibuch der Vereinigten Staaten, EP für das Europäische Arzneibuch',
  'the hash before a suture size stands for something else':
    'das Rautezeichen vor einer Fadenstärke steht für etwas anderes',
  'The hash before a suture size means number: #2 is size 2, without zeros':
    'Das Rautezeichen vor einer Fadenstärke heißt Nummer: #2 ist Stärke 2, ohne Nullen',
};

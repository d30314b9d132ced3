/** Titles of the checks and what each is about, by id, in German; the English stands in each check's own file. */
export const ABOUT_DE: Readonly<Record<string, { readonly title: string; readonly docs: string }>> = {
  'size-direction': {
    title: 'Die Zahlen laufen andersherum',
    docs: 'Ein Satz darüber, wie eine Skala läuft, widerspricht der Skala: Eine größere Gauge-Zahl heißt dünner, eine größere Charrière-Zahl heißt dicker, mehr Nullen heißt dünner. „A larger gauge“ ohne das Wort *number* bleibt unbeachtet, weil beides gemeint sein kann.',
  },
  'size-comparison': {
    title: 'Diese Größen verhalten sich umgekehrt',
    docs: 'Zwei Größen werden nach Dicke, lichter Weite, Reißfestigkeit oder dem Loch verglichen, das sie machen, und die Tabellen sagen das Gegenteil. Größen verschiedener Systeme werden in Millimetern verglichen, und nur, wenn sich ihre Bereiche nicht überschneiden.',
  },
  'flow-comparison': {
    title: 'Die größere lichte Weite hat mehr Durchfluss',
    docs: 'Von zwei gleich langen Venenverweilkanülen hat die weitere mehr Durchfluss. Geprüft wird nur die Reihenfolge, nie eine Flussrate; bei verschiedenen Längen wird nichts gemeldet.',
  },
  'size-conversion': {
    title: 'Der umgerechnete Wert stimmt nicht',
    docs: 'Neben einer Größe steht ein Wert in einem anderen System (mm, Zoll, Charrière, metrisch), der außerhalb des Bereichs der Norm liegt; das Runden der geschriebenen Ziffern ist berücksichtigt. Werte, über die sich Normen oder Hersteller nicht einig sind, bleiben unbeachtet.',
  },
  'size-order': {
    title: 'Diese Größen stehen nicht in der angekündigten Reihenfolge',
    docs: 'Eine Liste oder Spalte soll von dick nach dünn laufen oder von dünn nach dick, und eine Größe steht an der falschen Stelle.',
  },
  'size-range': {
    title: 'Die Größe liegt auf der anderen Seite des Bereichs',
    docs: 'Eine Größe soll innerhalb (oder außerhalb) eines danebenstehenden Bereichs liegen oder eine Grenze wie „18 G or wider“ einhalten, und sie tut es nicht.',
  },
  'size-class': {
    title: 'Kein Text zählt diese Größe zu dieser Klasse',
    docs: 'Ein großlumiger venöser Zugang hat 14 bis 16 G; manche Texte zählen 18 G dazu, darum bleibt 18 G unbeachtet, und 20 G und dünner werden gemeldet. Thoraxdrainagen und Ernährungssonden haben eigene Klassen; bei feinen und kräftigen Fäden und Kanülen werden nur die äußersten Größen geprüft. Auch eine Liste unter einer solchen Überschrift wird gelesen.',
  },
  'size-fit': {
    title: 'Das eine ist dicker als das, wo es hindurch soll',
    docs: 'Ein Draht, Katheter oder Tubus soll durch eine Kanüle, eine Schleuse oder einen Kanal passen, die enger sind, wie dünn ihre Wand auch ist. Was knapp passt, bleibt unbeachtet.',
  },
  'conversion-rule': {
    title: 'Die Umrechnungsregel stimmt nicht',
    docs: 'Eine Regel, mit der ein System in ein anderes umgerechnet wird, ist falsch angegeben: Charrière ist das Dreifache des Außendurchmessers in Millimetern, Charrière durch 3 ergibt also Millimeter; die metrische Fadenstärke zählt Zehntelmillimeter; 2-0 heißt zwei Nullen. Ein Tubus oder Absaugkatheter, der nach einer solchen Regel berechnet ist, wird nachgerechnet.',
  },
  'hub-colour': {
    title: 'Die Farbe gehört zu einer anderen Größe',
    docs: 'Für Kanülen gilt ISO 6009, für Venenverweilkanülen ISO 10555-5, und die beiden unterscheiden sich: Rosa ist eine Kanüle mit 18 G und eine Venenverweilkanüle mit 20 G. Sagt der Text nicht, was gemeint ist, bleibt eine Farbe unbeachtet, die zu einer von beiden passt. Gemeldet wird auch, wenn eine Farbe für beide dasselbe Gauge sein soll.',
  },
  'suture-material': {
    title: 'Das Material ist falsch beschrieben',
    docs: 'Ein Material (mit seinem Freinamen) wird resorbierbar, geflochten, monofil, natürlich oder synthetisch genannt und ist es nicht; oder es soll länger halten als ein Faden, der nach allen Texten länger hält. Materialien, die es in beiderlei Bauart gibt, bleiben unbeachtet.',
  },
  'needle-point': {
    title: 'Die Nadelspitze ist falsch beschrieben',
    docs: 'Eine innen schneidende Nadel hat ihre dritte Schneide an der Innenseite der Krümmung, eine außen schneidende an der Außenseite; Rundkörper- und stumpfe Nadeln haben keine. Gemeldet wird auch eine Spitze für ein Gewebe, für das alle Texte eine andere nennen (eine schneidende Nadel für den Darm, eine stumpfe für die Haut).',
  },
  'no-such-size': {
    title: 'Diese Größe gibt es nicht',
    docs: 'Das System kennt diese Größe nicht: In der USP gibt es kein 2.5-0 und kein 13-0, und keine Kanüle hat 36 G.',
  },
  'size-exists': {
    title: 'Diese Größe gibt es',
    docs: 'Eine Größe soll es nicht geben, oder eine Reihe soll enden, wo sie weitergeht: Es gibt Injektionskanülen mit 19 und 23 G und Fäden, die feiner sind als 7-0. Was ein Regal, eine Station, ein Hersteller oder ein einzelnes Material hat, bleibt unbeachtet, ebenso Venenverweilkanülen, Katheter und andere Kanülen.',
  },
  'quiz-key': {
    title: 'Die Lösung markiert eine falsche Antwort',
    docs: 'Die als richtig markierte Antwort (durch eine Lösungszeile, Fettdruck, ein Häkchen oder eine Lösungsliste) widerspricht den Tabellen, oder eine richtige ist als falsch markiert. Nicht markierte Antworten werden nie gemeldet.',
  },
  'unclear-size': {
    title: 'Das lässt sich auf zwei Weisen lesen',
    docs: 'Die Zahl lässt sich auf zwei Weisen verstehen: „pass a 2“ kann Stärke 2 oder 2-0 heißen, „14F“ eine Vierzehnjährige oder ein Katheter mit 14 Charrière, „18g“ ein Gewicht oder ein Gauge, „the next gauge up“ eine weitere Kanüle oder eine höhere Zahl, „a green one“ zwei Größen, wenn weder Kanüle noch Venenverweilkanüle genannt ist. Die Korrekturen schreiben jede Lesart aus; Sie wählen.',
  },
  'letter-for-zero': {
    title: 'Der Buchstabe O steht für eine Null',
    docs: '„4-O“ ist mit dem Buchstaben O geschrieben. Eine Suche nach 4-0 findet das nicht, und ein Vorleseprogramm spricht einen Buchstaben.',
  },
  'house-style': {
    title: 'Anders geschrieben, als der Kurs festlegt',
    docs: 'Der Kurs legt für jede Art von Größe eine Schreibweise fest. Solange nichts festgelegt ist, wird nichts gemeldet. Größen in Worten, Bereiche und Aufzählungen mit gemeinsamer Einheit bleiben, wie sie sind.',
  },
  'course-differs': {
    title: 'Ein anderer Text gibt diesem Instrument eine andere Größe',
    docs: 'Zwei Texte des Kurses geben einem Instrument gleichen Namens verschiedene Größen: „the triple-lumen line is 7 Fr“ hier, 9 Fr dort. Gezeigt werden beide Stellen; keine wird falsch genannt.',
  },
  'size-sheet': {
    title: 'Diese Tabelle oder Größentafel ist nicht auf dem neuesten Stand',
    docs: 'Eine Tabelle oder Größentafel zwischen `<!-- sizes table: gauge 14 16 18 -->` (oder `sizes chart:`) und `<!-- end of sizes -->` schreibt der Prüfer: Gemeldet wird, wenn sie nicht mehr sagt, was die Normen angeben, oder von Hand geändert wurde. Die Korrektur schreibt sie neu.',
  },
  'idle-mark': {
    title: 'Diese Markierung deckt nichts',
    docs: 'Ein Fehler kann mit `<!-- wrong on purpose: reason -->` in derselben Zeile oder direkt über dem Absatz absichtlich stehen bleiben. Gemeldet wird eine Markierung, die keinen Befund mehr deckt oder keinen Grund nennt.',
  },
};

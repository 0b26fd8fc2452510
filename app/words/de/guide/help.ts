import type * as english from '../../en/guide/help';
import type { Said } from '../../said';

export const helpWords: Said<typeof english.helpWords> = {
  who: 'Maße gehören zusammen: eine Person, ein Tag, über derselben Kleidung. Nimm sie als neuen Satz noch einmal, dann bleiben die alten. Längen stehen in Zoll oder Zentimetern; was gezeichnet ist, bleibt, wie es ist.',
  measures:
    'Sie entscheiden, wie ein Rock oder eine Unterhose passt. Schreibe 28, 34 1/2 oder 87 cm; die Eingabetaste geht zum nächsten. Ein Maß, das du jetzt nicht nehmen kannst, lässt sich aus den anderen schätzen und ist als geschätzt gekennzeichnet.',

  'square-up':
    'Ein Foto ist nie ganz gerade. Setze die vier Ecken auf etwas, das rechtwinklig gedruckt ist, den Rahmen der Tafel oder die Seite selbst, und das Bild wird gerade gerückt, als sähest du es genau von oben.',
  'known-lengths':
    'Ein Bild hat von sich aus keine Größe. Ziehe eine Linie entlang, deren wahre Länge du kennst: eine gedruckte Zahl, ein Maßstabsbalken, ein Viertel der Taille. Je länger die Linie, desto kleiner der Fehler. Eine quer und eine längs bestimmen beide Richtungen.',
  together:
    'Wo eine Tafel auf mehrere Bilder verteilt ist, verbinden sie zwei Stellen, die in beiden sind, und ein Maßstab gilt für alle.',
  'scale-check':
    'Jede angegebene Linie wird in dem Maßstab nachgemessen, der zu allen passt. Wo eine abweicht, ist die Zahl falsch gelesen, ein Ende liegt neben seinem Strich, oder die Tafel ist nicht maßstäblich gezeichnet.',
  source:
    'Aus welchem Buch die Vorlage ist, damit du sie in zehn Jahren wiederfindest. Es wird aufs Etikett gedruckt.',
  diagrams:
    'Jedes Bild, das du hereingeholt hast. Jedes wird für sich entzerrt und bemessen oder an ein anderes gelegt, das dieselbe Tafel zeigt.',

  tracing:
    'Drücke auf eine Ecke, wo die Linie scharf abbiegt, und auf ein, zwei Stellen an jeder Kurve; die Linie läuft durch jeden Punkt. Wo der Druck klar ist, kann sie ihm von selbst folgen. Drücke noch einmal auf die erste Ecke, um das Teil zu schließen.',
  pieces:
    'Jedes Schnittteil des Kleidungsstücks mit Namen. Ein Bund oder Streifen muss nicht nachgezeichnet werden: Zwei Zahlen machen ihn.',
  piece:
    'Wie oft und wie es zugeschnitten wird: wie gezeichnet, gegengleich als Paar oder als halbes Teil im Bruch. Und ob die nachgezeichnete Linie genäht oder geschnitten wird, was alte Tafeln selten sagen.',
  edge: 'Gib an, was die Kante ist, denn darauf ruhen die Prüfungen: was genäht wird, was um die Taille geht, was umgeschlagen wird. Die Nahtzugabe kommt außen an die Linie. Eine danebengedruckte Zahl wird mit der Zeichnung verglichen.',
  point:
    'Eine Ecke oder eine Stelle auf einer Kurve, nach ihrem Abstand von den Rändern des Tischs. Pfeiltasten bewegen sie um einen Schritt, mit Umschalt um einen feineren.',
  outline:
    'Das Teil, Punkt für Punkt und Kante für Kante erzählt, für Tastatur und Ohr. Was hier gewählt ist, ist auch auf dem Tisch gewählt.',
  dart: 'Ein Keil, der weggenäht wird, um den Stoff zu formen. Seine Breite liegt auf der Kante, seine Spitze im Teil; aus jeder Länge um den Körper ist er herausgerechnet.',
  notch:
    'Ein kleines Zeichen quer durch die Nahtzugabe. Zwei Knipse an zwei Kanten treffen sich beim Nähen, damit keine gedehnt wird.',
  'words-on-piece':
    'Worte, die auf dem Teil gedruckt werden, wo sie stehen: ab hier kräuseln, Schlitz, rechte Stoffseite.',
  grain:
    'Der gerade Fadenlauf des Stoffs: Ihm entlang dehnt er sich kaum. Er geht meist die Mitte entlang, und nach ihm wird das Teil aufgelegt.',
  'whole-garment':
    'Eine kleine Änderung an einem Teil, so oft genommen, wie es zugeschnitten wird, und an beiden Hälften, ist am Körper eine große. Das kommt ringsum zusammen.',
  'printed-sums':
    'Eine Zahl, die für mehrere Kanten zusammen gedruckt ist, etwa die ganze Taille, wird an die Summe der einzelnen gehalten.',

  'change-length':
    'Quer geschnitten und aufgerückt oder weggefaltet, wo eine Figur länger oder kürzer ist; am Saum, wo nur die Länge anders ist.',
  'change-width':
    'An einer Naht eingenommene Weite läuft auf nichts aus; eingeschnittene Weite öffnet sich wie ein Fächer von einer Kante zur anderen; Kräusel und Falten sind Weite, die kleiner angenäht wird.',
  'change-darts':
    'Ein Abnäher kann sich um seine Spitze drehen, geteilt oder zu Ausstellung oder Naht werden: Der Keil, den er wegnimmt, bleibt gleich.',
  'change-waist':
    'Eine gerade Taille bekommt den Bogen eines Körpers, die Taille wird gehoben oder gesenkt, ein Saum waagerecht gemacht.',
  'new-pieces':
    'Teile, die sich aus den vorhandenen ergeben, und Grundschnitte aus den Maßen, zum Nachzeichnen oder Danebenlegen.',
  trying:
    'Noch ist nichts getan: Die Änderung liegt über dem Teil, mit Zahlen, was sie bewirken und was danach neu nicht stimmen würde. Übernimm sie, oder lass alles, wie es war.',

  seams:
    'Welche Kante an welche genäht wird. Von da an werden ihre Längen aneinandergehalten, was immer du änderst.',
  'proposed-pairs': 'Kanten, deren Namen und Längen sagen, dass sie zusammengehören. Nimm die, die stimmen.',
  'pair-edges':
    'Drücke auf dem Tisch auf eine Kante und dann auf die, an die sie genäht wird. Mehrere Kanten auf einer Seite, wie Bahnen an einem Bund, kommen nacheinander.',
  'loose-edges':
    'Nahtkanten, die noch an nichts genäht sind. Eine davon kann eine Öffnung sein, oder ein Teil fehlt.',
  'one-seam':
    'Eine Kante wird an der anderen abgegangen wie mit zwei Papierteilen: wohin die Knipse fallen, was am Ende länger ist und wie Taille und Saum über die Naht weiterlaufen.',
  walked:
    'Beide Seiten in Zahlen, Abnäher zugefaltet. Ein Unterschied kann gemeint sein, als Mehrweite über einer Schulter oder als Kräusel an einem Bund: Dann schreibe ihn auf.',
  trueing:
    'Wege, die beiden Seiten anzugleichen: an einem Ende, über die ganze Länge oder mit dem Unterschied als Mehrweite. Jeder wird gezeigt, bevor er genommen wird.',

  ring: 'Die Teile, die zusammen einmal um den Körper gehen, jedes so oft, wie es zugeschnitten wird. Eine hier vergessene Bahn zeigt sich sofort: Das Kleidungsstück ist halb so weit wie die Trägerin.',
  'fit-findings': 'Was Teile und Maße voneinander sagen, das Schwerste zuerst.',
  levels:
    'Taille, Hüfte und jede andere Höhe, auf der gemessen wurde, am Teil hinunter und nicht gerade das Papier hinab. Daneben, was die Teile ringsum ergeben, Abnäher weggefaltet.',
  ease: 'Luft über den Körper hinaus, zum Atmen und Sitzen. Was üblich ist, steht hier mit seiner Herkunft; was du bei einer Höhe schreibst, geht vor.',
  'curved-waist':
    'Von der Taille zur Hüfte ist ein Körper fast ein Kegel, und der obere Rand eines flach gelegten Kegels ist ein Bogen. Eine gerade Taille steht in der Mitte ab und zieht an den Seiten.',
  wearing:
    'Die engste Stelle muss über die weiteste des Körpers: mit einer Öffnung, mit einer eingezogenen Taille oder über die Schultern. Und ein Saum muss Platz für einen Schritt lassen.',
  'worn-over': 'Wie lang das Kleidungsstück darüber ist, damit von diesem nichts hervorsieht.',

  'mock-ups':
    'Ein Versuch aus billigem Stoff, nach dem Entwurf, wie er jetzt ist. Der Entwurf wird dabei als Fassung aufbewahrt, damit Nadeln an dem gelesen werden, was zugeschnitten wurde.',
  pinned:
    'Jede Nadel der Anprobe und was aus ihr wurde: noch offen, in den Entwurf übertragen oder mit Grund abgelehnt. Keine geht vergessen.',
  noting:
    'Gib an, wo an der Kante die Nadeln saßen und wie viel sie nahmen. Ein Fältchen durch beide Lagen nimmt von jeder die Hälfte seiner Breite.',
  fading: 'Wie die Änderung vor der ersten und nach der letzten Nadel ausläuft: auf nichts, über die Länge, die du angibst.',
  carrying:
    'Zuerst über dem Entwurf gezeigt, an beiden Kanten der Naht, mit dem, was es am ganzen Kleidungsstück bewirkt.',

  'version-now':
    'Bewahre den Entwurf, wie er jetzt ist, mit Nummer und Namen auf, bevor du viel änderst. Es braucht wenig Platz.',
  versions: 'Jeder aufbewahrte Entwurf, der jüngste zuerst. Wähle einen, um ihn unter dem heutigen zu sehen.',
  'one-version':
    'Was sich zwischen dieser Fassung und dem Entwurf unterscheidet, Teil für Teil. Jedes Teil oder alles lässt sich zurückholen; der heutige Entwurf wird vorher aufbewahrt.',
  steps: 'Was seit dem Nachzeichnen mit den Teilen geschah, der Reihe nach.',
  'as-traced':
    'Die Linien, wie du sie zuerst nachgezeichnet hast. Sie bleiben für immer so und lassen sich unter den Entwurf legen.',
  'what-was-cut':
    'Schreibe auf, wann nach dem Entwurf zugeschnitten wurde. Ändert er sich danach, erfährst du, was nicht mehr dazu passt.',

  'compare-what':
    'Jedes Teil über jedem anderen: von diesem Kleidungsstück, einer Fassung, einem anderen im Regal oder einem Grundschnitt aus den Maßen.',
  'compare-how':
    'Nach welcher Ecke oder Kante das zweite Teil auf das erste gelegt wird. Es lässt sich auch von Hand bewegen.',
  'compare-figures':
    'Wo die beiden auseinandergehen, Kante für Kante: wie weit nach außen oder innen, und wo am meisten.',
  'compare-words': 'Dasselbe in Sätzen, zum Vorlesen oder zum Aufbewahren beim Kleidungsstück.',

  cloth:
    'Wie breit der Stoff zwischen den Webkanten ist und wie er liegt. Längs gefaltet wird jedes Teil zweimal zugleich zugeschnitten, und Bruchteile liegen am Bruch; offen liegt jedes für sich. Mit Strich, Glanz oder einem Druck mit oben und unten zeigen alle Teile in eine Richtung.',
  'cloth-more':
    'Streifen und Rapporte, die sich treffen müssen, Fehler, die frei bleiben, Einlaufen beim Waschen und Reste von seltsamer Form.',
  'cut-from-it':
    'Für welche Teile dieser Stoff ist, und die Streifen, die mit zugeschnitten werden: Bünde, Belege, Schrägstreifen.',
  strip:
    'Ein Streifen nach Länge und Breite. Wo angestückt werden darf, wird er in Längen zugeschnitten, die auf den Stoff gehen.',
  'lay-how':
    'Gerade an der Webkante entlang, quer dazu oder mit 45° im Schrägfadenlauf; ob Teile sich drehen dürfen; wie viel Platz dazwischen bleibt.',
  places:
    'Jedes Teil auf dem Stoff mit seinem Platz in Zahlen. Stecke eines fest, und es bleibt, wenn der Rest neu aufgelegt wird.',
  'lay-sums': 'Was der Zuschneideplan braucht, in Zoll, Yards und Metern, und wie viel vom Stoff genutzt ist.',
  beside:
    'Dieselben Teile gerade und schräg oder auf anderen Breiten, nebeneinander: was jedes braucht und kostet.',
  'bias-strips':
    'Aus einem Stoffquadrat so viele Yards Schrägstreifen, oder für so viele Yards ein Quadrat dieser Größe.',
  budget: 'Was der Stoff kostet, in Geld oder Punkten der Kleiderkarte, und was dieser Zuschneideplan ausmacht.',
  'lay-plan':
    'Der Zuschneideplan auf Papier: ein Blatt für den Zuschneidetisch oder ein maßstäblicher Bogen.',

  pages:
    'Blätter in Originalgröße zum Zusammenfügen, oder ein kleines Blatt mit nummerierten Quadraten, um das Teil mit dem langen Lineal auf Packpapier zu bringen.',
  'paper-size': 'Das Papier in deinem Drucker. Die Blätter werden so gelegt, dass möglichst wenige nötig sind.',
  'more-pages':
    'Ränder, wie Blätter überlappen und gekennzeichnet sind, und was sonst darauf steht. Meist kann es bleiben, wie es ist.',
  proof:
    'Drucker und die Programme, die Seiten zeigen, verkleinern gern. Miss die gedruckten Maße nach, schreibe auf, was du abliest, und du erfährst, ob auf den Schnitt Verlass ist und was sonst zu tun ist.',
  printed:
    'Was wann gedruckt wurde. Nach einer Änderung erfährst du, welche Blätter nicht mehr stimmen; nur die werden neu gedruckt.',
  envelope:
    'Ein Etikett mit allem, was man vergisst: was es ist, für wen, aus welchem Buch, wie viel Stoff.',
  'drawing-files': 'Für andere Programme: SVG in Originalgröße, DXF in Millimetern.',
  'squares-sheet':
    'Eine kleine Zeichnung auf nummerierten Quadraten und eine Punktetabelle: wie weit nach rechts und nach unten jeder vom Nullpunkt liegt. Zwei Längen darauf weisen das Ganze nach.',
  'screen-paper':
    'Ein großer Bildschirm oder ein Beamer über dem Tisch statt Papier: einmal ausgemessen, steht das Teil dort in Originalgröße.',
};

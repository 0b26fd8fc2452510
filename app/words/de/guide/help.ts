import type * as english from '../../en/guide/help';
import type { Said } from '../../said';

export const helpWords: Said<typeof english.helpWords> = {
  who: 'Maße gehören zusammen: eine Person, ein Tag, über derselben Kleidung. Nimm sie später als neuen Satz, und die alten bleiben. Längen stehen in Zoll oder in Zentimetern, zu wechseln hier und oben in jedem Raum; was gezeichnet ist, bleibt, wie es ist.',
  measures: (shownIn) =>
    `Sie entscheiden, wie ein Rock oder eine Unterhose passt. Schreibe ${shownIn === 'in' ? '28, 34 1/2 oder 87 cm' : '71, 87,5 oder 34 1/2 in'}; die Eingabetaste geht zum nächsten. Ein Maß, das du jetzt nicht nehmen kannst, lässt sich aus den anderen schätzen und ist als geschätzt gekennzeichnet.`,

  'square-up':
    'Ein Foto ist nie ganz gerade. Setze die vier Ecken auf etwas, das rechtwinklig gedruckt ist, den Rahmen der Tafel oder die Seite selbst, und das Bild liegt flach, wie genau von oben gesehen.',
  'known-lengths':
    'Ein Bild hat von sich aus keine Größe. Ziehe eine Linie an etwas entlang, dessen wahre Länge du kennst: an einer gedruckten Zahl, einem Maßstabsbalken, einem Viertel der Taille. Je länger die Linie, desto kleiner der Fehler. Eine quer und eine längs legen beide Richtungen fest.',
  together:
    'Kam eine Tafel in mehreren Bildern, so verbinden zwei Stellen, die in beiden sind, die Bilder, und ein Maßstab gilt für alle.',
  'scale-check':
    'Jede Linie, die du angegeben hast, wird noch einmal in dem Maßstab gemessen, der zu allen passt. Wo eine abweicht, ist die Zahl falsch gelesen, ein Ende liegt neben seinem Strich, oder die Tafel ist nicht maßstäblich gezeichnet.',
  source:
    'Aus welchem Buch die Vorlage ist, damit du sie in zehn Jahren wiederfindest. Es wird auf das Etikett gedruckt.',
  diagrams:
    'Alle Bilder, die du hereingeholt hast. Jedes wird für sich entzerrt und in den Maßstab gebracht oder mit einem anderen verbunden, das dieselbe Tafel zeigt.',

  tracing:
    'Drücke auf jede Ecke, wo die Linie scharf abbiegt, und auf eine oder zwei Stellen in jeder Kurve; die Linie läuft durch jeden Punkt. Wo der Druck klar ist, kann sie ihm von selbst folgen. Drücke noch einmal auf die erste Ecke, um das Teil zu schließen.',
  pieces: 'Alle Schnittteile mit Namen. Ein Bund oder Streifen muss nicht nachgezeichnet werden: Zwei Zahlen genügen.',
  piece:
    'Wie oft es zugeschnitten wird und wie: wie gezeichnet, gegengleich oder als Hälfte im Bruch. Und ob die nachgezeichnete Linie genäht oder geschnitten wird, was alte Tafeln selten sagen.',
  edge: 'Sage, was die Kante ist, denn darauf ruhen die Prüfungen: was genäht wird, was um die Taille geht, was umgeschlagen wird. Die Nahtzugabe kommt außen an die Linie. Eine Zahl, die daneben gedruckt ist, wird mit der Zeichnung verglichen.',
  point:
    'Eine Ecke oder eine Stelle in einer Kurve, danach, wie weit sie nach rechts und nach unten von der Null des Tisches liegt. Pfeiltasten schieben sie um den Schritt, auf dem sie einrastet.',
  outline:
    'Das Teil Punkt für Punkt und Kante für Kante, für die Tastatur und zum Hören. Was hier gewählt wird, ist auch auf dem Tisch gewählt.',
  dart: 'Ein Keil, der weggenäht wird, um den Stoff zu formen. Seine Breite liegt auf der Kante, seine Spitze im Teil; in jeder Länge um den Körper ist er herausgerechnet.',
  notch:
    'Ein kleines Zeichen quer über die Nahtzugabe. Zwei Knipse an zwei Kanten treffen sich beim Nähen, so wird keine gedehnt.',
  'words-on-piece': 'Text, der dort auf das Teil gedruckt wird, wo er steht: ab hier kräuseln, Schlitz, rechte Seite.',
  grain:
    'Der Fadenlauf: Längs gibt der Stoff kaum nach. Meist läuft er an der Mitte entlang, und nach ihm wird das Teil aufgelegt.',
  'whole-garment':
    'Eine kleine Änderung an einem Teil ist, so oft es zugeschnitten wird und an beiden Hälften, am Körper eine große. Hier steht, was es ringsum ausmacht.',
  'printed-sums':
    'Eine Zahl, die für mehrere Kanten zusammen gedruckt ist, etwa die Taille ringsum, wird mit der Summe der einzelnen verglichen.',

  'change-length':
    'Quer durchgeschnitten und auseinandergerückt oder weggefaltet, wo eine Figur länger oder kürzer ist; am Saum, wo nur die Länge anders ist.',
  'change-width':
    'An einer Naht weggenommene Weite läuft auf null aus; eingeschnittene Weite öffnet sich wie ein Fächer von Kante zu Kante; Kräusel und Falten sind Weite, die schmaler eingenäht wird.',
  'change-darts':
    'Ein Abnäher kann um seine Spitze wandern, geteilt werden oder zu Weite oder Naht werden: Der Keil, den er wegnimmt, bleibt derselbe.',
  'change-waist':
    'Eine gerade Taille bekommt die Kurve eines Körpers, die Taille wird höher oder tiefer gelegt, ein Saum ausgeglichen.',
  'new-pieces':
    'Teile, die aus den vorhandenen folgen, und Grundschnitte nach den Maßen, zum Nachzeichnen oder Danebenlegen.',
  trying:
    'Noch ist nichts geschehen: Die Änderung liegt über dem Teil, mit dem, was sie in Zahlen bewirkt und was dann neu nicht stimmte. Nimm sie, oder lass alles, wie es war.',

  seams:
    'Welche Kante an welche genäht wird. Von da an werden ihre Längen miteinander verglichen, was immer du änderst.',
  'proposed-pairs': 'Kanten, deren Namen und Längen sagen, dass sie zusammengehören. Nimm die, die stimmen.',
  'pair-edges':
    'Drücke auf dem Tisch auf eine Kante und dann auf die, an die sie genäht wird. Mehrere Kanten auf einer Seite, wie Bahnen an einem Bund, werden nacheinander genommen.',
  'loose-edges':
    'Nahtkanten, die noch an nichts genäht sind. Eine davon mag eine Öffnung sein, oder es fehlt ein Teil.',
  'one-seam':
    'Eine Kante an der anderen abgegangen, wie mit zwei Papierteilen: wo die Knipse hinfallen, was am Ende länger ist und wie Taille und Saum über die Naht weiterlaufen.',
  walked:
    'Beide Seiten in Zahlen, Abnäher herausgefaltet. Ein Unterschied kann gewollt sein, als Einhalten an einer Schulter oder Kräusel an einem Bund: Dann schreibe ihn auf.',
  trueing:
    'Wege, beide Seiten gleich zu machen: an einem Ende, über die ganze Länge, oder der Unterschied bleibt und wird eingehalten. Jeder wird erst gezeigt, dann genommen.',

  ring: 'Die Teile, die zusammen einmal um den Körper gehen, jedes so oft, wie es zugeschnitten wird. Eine vergessene Bahn zeigt sich sofort: Das Kleidungsstück ist halb so weit wie die Trägerin.',
  'fit-findings': 'Was Teile und Maße voneinander sagen, das Schwerste zuerst.',
  levels:
    'Taille, Hüfte und jede andere Höhe, in der gemessen wurde, am Teil entlang hinab und nicht senkrecht auf dem Papier. Daneben, was die Teile ringsum ergeben, Abnäher weggefaltet.',
  ease: 'Platz über den Körper hinaus, zum Atmen und Sitzen. Hier steht, was üblich ist und woher es kommt; was du bei einer Höhe einträgst, geht vor.',
  'curved-waist':
    'Von der Taille zur Hüfte gleicht ein Körper einem Kegel, und der obere Rand eines flach gelegten Kegels ist eine Kurve. Eine gerade Taille steht in der Mitte ab und zieht an den Seiten.',
  wearing:
    'Die engste Stelle muss über die weiteste des Körpers: mit einer Öffnung, mit einem Tunnelzug oder über die Schultern. Und ein Saum muss Platz für einen Schritt lassen.',
  'worn-over': 'Wie lang das ist, was darüber getragen wird, damit von diesem nichts darunter hervorsieht.',

  'mock-ups':
    'Ein Versuch in billigem Stoff, zugeschnitten nach dem Entwurf von jetzt. Der Entwurf wird dabei als Fassung aufbewahrt, damit die Nadeln an dem gelesen werden, was zugeschnitten wurde.',
  pinned:
    'Jede Nadel der Anprobe und was aus ihr wurde: noch offen, in den Entwurf übertragen oder mit Grund abgelehnt. Keine wird vergessen.',
  noting:
    'Sage, wo an der Kante die Nadeln steckten und wie viel sie wegnahmen. Eine Falte, über beide Lagen gesteckt, nimmt von jeder die Hälfte ihrer Breite.',
  fading:
    'Wie die Änderung vor der ersten und nach der letzten Nadel ausläuft: auf null, über die Länge, die du sagst.',
  carrying:
    'Erst über dem Entwurf gezeigt, an beiden Kanten der Naht, mit dem, was es für das ganze Kleidungsstück bewirkt.',

  'version-now': 'Bewahre den Entwurf mit Nummer und Namen auf, bevor du viel änderst. Es braucht wenig Platz.',
  versions:
    'Alle Entwürfe, die du aufbewahrt hast, der neueste zuerst. Wähle einen, um ihn unter dem heutigen zu sehen.',
  'one-version':
    'Was sich zwischen dieser Fassung und dem Entwurf unterscheidet, Teil für Teil. Jedes Teil oder alles lässt sich zurückholen; der heutige Entwurf wird vorher aufbewahrt.',
  steps: 'Was seit dem Nachzeichnen an den Teilen getan wurde, der Reihe nach.',
  'as-traced':
    'Die Linien, wie du sie zuerst nachgezeichnet hast. Sie bleiben für immer so und können unter den Entwurf gelegt werden.',
  'what-was-cut':
    'Schreibe auf, wann Stoff nach dem Entwurf zugeschnitten wurde. Ändert er sich danach, erfährst du, was nicht mehr dazu passt.',

  'compare-what':
    'Jedes Teil über jedem anderen: aus diesem Kleidungsstück, einer Fassung, einem anderen im Regal oder einem Grundschnitt nach den Maßen.',
  'compare-how':
    'An welcher Ecke oder Kante das zweite Teil auf dem ersten liegt. Es lässt sich auch von Hand schieben.',
  'compare-figures': 'Wo beide auseinandergehen, Kante für Kante: wie weit nach außen oder innen, und wo am meisten.',
  'compare-words': 'Dasselbe in Sätzen, zum Vorlesen oder um es beim Kleidungsstück aufzuheben.',

  cloth:
    'Wie breit der Stoff von Webkante zu Webkante ist und wie er liegt. Der Länge nach gefaltet wird jedes Teil zweimal zugleich zugeschnitten, und Bruchteile liegen im Bruch; offen liegt jedes für sich. Mit Strich, Glanz oder einem Muster mit oben und unten zeigen alle Teile in eine Richtung.',
  'cloth-more':
    'Streifen und Rapporte, die sich treffen müssen, Fehler, denen auszuweichen ist, Einlaufen beim Waschen und Reste von krummer Form.',
  'cut-from-it':
    'Für welche Teile dieser Stoff ist, und die Streifen, die mit zugeschnitten werden: Bund, Belege, Schrägstreifen.',
  strip:
    'Ein Streifen nach Länge und Breite. Wo er angestückt werden darf, wird er in Längen geschnitten, die auf den Stoff gehen.',
  'lay-how':
    'Im Fadenlauf an der Webkante, quer dazu oder unter 45° im Schrägfadenlauf; ob Teile kopfüber liegen dürfen; wie viel Platz zwischen ihnen bleibt.',
  places:
    'Jedes Teil auf dem Stoff mit seinem Platz in Zahlen. Stecke eines fest, und es bleibt liegen, wenn die übrigen neu gelegt werden.',
  'lay-sums':
    'Wie viel die Teile brauchen, als Länge und als das, was im Laden zu verlangen ist, in Yards und in Metern, und wie viel vom Stoff genutzt ist.',
  beside: 'Dieselben Teile gerade und schräg oder auf anderen Breiten nebeneinander: was jedes braucht und kostet.',
  'bias-strips':
    'Aus einem Quadrat Stoff so viel Schrägstreifen, oder für so viel Schrägstreifen ein Quadrat dieser Größe.',
  budget: 'Was der Stoff kostet, in Geld, Marken oder Punkten, und was dieser Zuschneideplan kostet.',
  'lay-plan': 'Der Zuschneideplan auf Papier: auf einem Blatt für den Zuschneidetisch, oder maßstäblich.',

  pages:
    'Blätter in Originalgröße zum Zusammensetzen, oder ein kleines Blatt mit nummerierten Quadraten, um das Teil mit einem langen Lineal auf Packpapier zu übertragen.',
  'paper-size': 'Das Papier in deinem Drucker. Die Blätter werden so gelegt, dass es möglichst wenige sind.',
  'more-pages':
    'Ränder, wie Blätter überlappen und bezeichnet sind und was sonst darauf steht. Die meisten lassen es, wie es ist.',
  proof:
    'Drucker und Programme, die Seiten zeigen, verkleinern sie gern. Miss die gedruckten Maßlinien, schreibe auf, was du abliest, und du erfährst, ob dem Schnitt zu trauen ist und was sonst zu tun ist.',
  printed:
    'Was wann gedruckt wurde. Nach einer Änderung erfährst du, welche Blätter nicht mehr stimmen; nur diese werden neu gedruckt.',
  envelope: 'Ein Etikett mit allem, was man vergisst: was es ist, für wen, aus welchem Buch, wie viel Stoff.',
  'drawing-files': 'Für andere Programme: SVG in Originalgröße, DXF in Millimetern.',
  'squares-sheet':
    'Eine kleine Zeichnung auf nummerierten Quadraten und eine Tabelle der Punkte: wie weit nach rechts und nach unten jeder von null liegt. Zwei Längen darauf prüfen das Ganze.',
  'screen-paper':
    'Ein großer Bildschirm oder ein Beamer über dem Tisch an der Stelle von Papier: Einmal gemessen, steht das Teil dort in Originalgröße.',
};

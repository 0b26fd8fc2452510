import type { TradeWord } from '../../en/guide/glossary';

/** The words of the trade as they are used here, in the order of the German alphabet; common practice throughout. */
export const glossary: readonly TradeWord[] = [
  {
    word: 'Abgehen',
    means: 'Eine Kante Stück für Stück an die andere legen, wie sie genäht werden, und sehen, ob sie übereinstimmen.',
  },
  { word: 'Abnäher', means: 'Ein Keil, der weggefaltet und genäht wird, damit flacher Stoff um einen Körper geht.' },
  {
    word: 'Ausgleichen',
    means:
      'Zwei Kanten, die zusammengenäht werden, gleich lang machen, und Linien über die Naht glatt weiterlaufen lassen.',
  },
  { word: 'Ausstellung', means: 'Das Weiterwerden eines Teils zum Saum hin.' },
  { word: 'Bahn', means: 'Eines von mehreren Teilen eines Rocks, oben schmal und unten weit.' },
  {
    word: 'Balance',
    means: 'Wie Vorder- und Rückenteil zueinander hängen. Hebt sich der Saum vorn, fehlt die Balance.',
  },
  {
    word: 'Bekannte Länge',
    means: 'Eine Linie im Bild, deren Länge in Originalgröße du kennst. Sie gibt den Maßstab.',
  },
  { word: 'Beleg', means: 'Ein Teil, zugeschnitten wie eine Kante und nach innen gewendet, um sie zu versäubern.' },
  {
    word: 'Bruch, im',
    means: 'Ein halbes Teil, mit einer Kante an gefalteten Stoff gelegt, damit es ganz herauskommt.',
  },
  { word: 'Bund', means: 'Der Streifen, der eine Taille abschließt. Ein Formbund ist gebogen wie der Körper.' },
  { word: 'Einnehmen, auslassen', means: 'An einer Naht enger oder weiter machen.' },
  { word: 'Entzerren', means: 'Ein schräg aufgenommenes Bild so drehen, als wäre es gerade von oben gesehen.' },
  { word: 'Fadenlauf', means: 'Die Richtung der Fäden; der gerade Fadenlauf geht an der Webkante entlang.' },
  { word: 'Gegengleich', means: 'Zwei Teile aus einer Zeichnung, eines davon gewendet, wie für links und rechts.' },
  {
    word: 'Gesteckte Änderung',
    means: 'Was am Körper eingenommen oder ausgelassen wurde, mit seiner Stelle an der Kante.',
  },
  { word: 'Hohe Hüfte', means: 'Etwa halb zwischen Taille und Hüfte, über den Hüftknochen.' },
  { word: 'Hüfte', means: 'Die stärkste Stelle unter der Taille, wo immer sie liegt.' },
  { word: 'Knips', means: 'Ein Zeichen an einer Kante, das sein Gegenstück an einer anderen Kante trifft.' },
  {
    word: 'Mehrweite',
    means:
      'Bequemlichkeitszugabe: Luft über das Maß des Körpers hinaus, zum Bewegen und Atmen. Auch der Betrag, um den eine längere Kante in eine kürzere eingehalten wird.',
  },
  { word: 'Nahtlinie', means: 'Die Linie, auf der genäht wird.' },
  {
    word: 'Nahtzugabe',
    means: 'Was über die Nahtlinie hinaus zugegeben wird, damit Stoff zum Einnähen oder Umschlagen da ist.',
  },
  { word: 'Nail', means: 'Ein altes Stoffmaß: 2 1/4 in (5,7 cm), der sechzehnte Teil eines Yards.' },
  { word: 'Netto', means: 'Bis zur Nahtlinie gezeichnet, ohne Nahtzugaben.' },
  { word: 'Passe', means: 'Der anliegende obere Teil, an den ein weiterer angenäht wird.' },
  { word: 'Probeteil', means: 'Das Kleidungsstück zuerst aus billigem Stoff, zum Anprobieren und Kennzeichnen.' },
  {
    word: 'Querfadenlauf',
    means: 'Quer über den Stoff, von Webkante zu Webkante. Er gibt etwas mehr nach als der gerade Fadenlauf.',
  },
  { word: 'Rapport', means: 'Wie weit ein Muster im Stoff läuft, bevor es wiederkommt.' },
  {
    word: 'Rasterblatt',
    means: 'Eine kleine Zeichnung auf nummerierten Quadraten mit einer Punktetabelle, zum Übertragen auf Packpapier.',
  },
  { word: 'Saum', means: 'Die untere Kante und was umgeschlagen wird, um sie zu versäubern.' },
  { word: 'Schlitzleiste', means: 'Der Abschluss der Öffnung, durch die man hineinkommt.' },
  { word: 'Schnittlinie', means: 'Die Linie, der die Schere folgt: die Nahtlinie mit ihren Zugaben.' },
  {
    word: 'Schrägfadenlauf',
    means: 'Jede Richtung schräg zu den Fäden; der echte liegt bei 45° zu ihnen und dehnt sich am meisten.',
  },
  { word: 'Seitennaht', means: 'Die Naht, die vorn und hinten an der Seite verbindet.' },
  {
    word: 'Strich',
    means: 'Flor, Glanz oder Druck, der kopfüber anders aussieht; alle Teile müssen in einer Richtung liegen.',
  },
  { word: 'Webkante', means: 'Die gewebte Kante des Stoffs. Sie ist fester als der Rest und bleibt meist weg.' },
  { word: 'Zuschneideplan', means: 'Alle Teile auf dem Stoff, bereit zum Zuschneiden.' },
];

import type * as english from '../../en/guide/how-to';
import type { HowTo } from '../../en/guide/how-to';
import { roundLength } from '../../written';

export const howTos: Readonly<Record<keyof typeof english.howTos, HowTo>> = {
  'whole-job': {
    title: 'Die ganze Arbeit in Bildern',
    why: 'Von einer kleinen gedruckten Vorlage zum Kleidungsstück, das passt, ein Bild für jedes Stück des Wegs. Die Räume am Maßband stehen in dieser Reihenfolge.',
    steps: [
      { say: 'Maße: Nimm die Maße des Körpers, für den es ist.', drawing: 'tape-at-waist' },
      {
        say: 'Vorlage: Fotografiere die Seite gerade von oben und hole das Bild herein.',
        drawing: 'camera-square',
      },
      { say: 'Setze die vier Ecken auf den Rahmen der Seite: Das Bild wird entzerrt.', drawing: 'corner-pins' },
      {
        say: 'Gib an, wie lang eine Linie in Originalgröße ist, etwa ein Viertel der Taille.',
        drawing: 'known-length',
      },
      {
        say: 'Entwurf: Zeichne die Linien auf den nummerierten Quadraten nach, Ecke für Ecke.',
        drawing: 'points-on-curve',
      },
      { say: 'Gib an, was jede Kante ist und an welcher der Stoff gefaltet liegt.', drawing: 'half-on-fold' },
      { say: 'Umformen: Mache es länger, weiter oder enger für sie.', drawing: 'longer-by' },
      {
        say: 'Nähte: Nahtzugaben stehen ringsum, und Kanten, die zusammengenäht werden, stimmen überein.',
        drawing: 'cut-line',
      },
      {
        say: 'Passform: Alle Bahnen zusammen gehen um Taille und Hüfte, oder das Notizbuch sagt, was fehlt.',
        drawing: 'round-the-body',
      },
      { say: 'Eine gerade Taille wird gebogen, wie der Körper es braucht.', drawing: 'waist-from-cone' },
      {
        say: 'Probe: Nähe es aus billigem Stoff, stecke am Körper, notiere jede Nadel und übertrage sie alle.',
        drawing: 'pin-and-fold',
      },
      {
        say: 'Vergleich: Lege es über das zuerst Nachgezeichnete oder einen anderen Schnitt und lies, was anders ist.',
        drawing: 'two-laid',
      },
      { say: 'Stoff: Lege gerade oder schräg auf und wisse, wie viel Stoff es braucht.', drawing: 'grain-ways' },
      { say: 'Papier: Drucke in Originalgröße und füge die Blätter zusammen …', drawing: 'joined-pages' },
      { say: '… oder bringe es nach seinen Quadraten auf Packpapier.', drawing: 'squares-carried' },
      {
        say: 'Vor dem Zuschneiden: Sieh die Liste durch. Lege den Schnitt dann in seinen Umschlag, und eine Kopie der Datei dazu.',
        drawing: 'envelope',
      },
    ],
  },
  measuring: {
    title: 'Allein Maß nehmen',
    why: 'Vier Maße entscheiden, ob ein Rock passt: Taille, Hüfte, wie tief die Hüfte unter der Taille liegt, und die Länge.',
    steps: [
      { say: 'Trage, was darunter getragen wird, auch Korsett und Unterröcke. Schreibe auf, was es war.' },
      {
        say: 'Binde eine Schnur oder schmales Gummi um die Taille und bewege dich. Wo es sich hinlegt, ist die Taille; lass es für alle anderen Maße dran.',
        drawing: 'tape-at-waist',
      },
      {
        say: 'Miss die Taille über der Schnur, das Maßband flach, ein Finger darunter. Lies vorn ab, wo du es siehst, ohne dich zu beugen.',
      },
      {
        say: 'Die Hüfte ist die stärkste Stelle, wo immer sie ist. Halte das Maßband locker, lass es hinuntergleiten und behalte die größte Zahl. Ein Spiegel an der Seite zeigt, ob es waagerecht liegt.',
        drawing: 'level-tape',
      },
      {
        say: 'Stecke das Maßband dort fest und miss an der Seite gerade von der Schnur hinunter: So tief liegt die Hüfte.',
        drawing: 'hip-depth',
      },
      {
        say: 'Für Längen stehe gerade, hänge ein Maßband mit einem Gewicht am Boden von der Schnur und lies im Spiegel ab. Vorn, Seite und hinten sind verschieden: Nimm jede.',
      },
      {
        say: (shownIn) =>
          `Nimm jedes Maß zweimal. Liegen die beiden mehr als ${roundLength(shownIn, 1 / 4, 0.5)} auseinander, nimm ein drittes.`,
      },
    ],
  },
  photographing: {
    title: 'Eine Vorlage fotografieren',
    why: 'Was das Bild nicht zeigt, lässt sich nicht entzerren. Eine Minute hier spart eine Stunde beim Nachzeichnen.',
    steps: [
      {
        say: 'Lege die Seite so flach, wie die Bindung erlaubt. Gewichte kommen auf den Rand, nie auf die Zeichnung.',
        drawing: 'page-weights',
      },
      {
        say: 'Nimm den ganzen gedruckten Rahmen ins Bild, oder die ganze Seite, mit etwas Tisch ringsum. Seine vier Ecken entzerren das Bild.',
        drawing: 'camera-square',
      },
      {
        say: 'Stehe über der Mitte und tritt zurück; zoome lieber, als nah heranzugehen. Aus der Nähe biegt sich eine Seite an den Rändern.',
      },
      {
        say: 'Tageslicht aus einem Fenster an der Seite ist am besten. Kein Blitz auf glänzendem Papier; halte den eigenen Schatten fern.',
      },
      {
        say: 'Sieh das Bild in voller Größe an, bevor du das Heft weglegst: Sind die dünnste Linie und die kleinste Zahl zu lesen?',
      },
      {
        say: 'Hole es herein. Ecken werden vorgeschlagen; ziehe jede unter der Lupe an ihren Platz.',
        drawing: 'corner-pins',
      },
      {
        say: 'Gib mindestens zwei bekannte Längen an, eine quer und eine längs, jede so lang wie möglich. Eine gedruckte Zahl oder ein Teil eines Maßes, etwa ein Viertel der Taille, genügt.',
        drawing: 'known-length',
      },
    ],
    care: 'Alte Bindungen brechen. Drücke kein Buch flach, das nicht flach liegen will: Eine gebogene Seite lässt sich hier glätten.',
  },
  tracing: {
    title: 'Ein Teil nachzeichnen',
    why: 'Ein Teil ist ein Ring aus Ecken mit Kanten dazwischen. Wenige Punkte machen eine glatte Kante, viele eine holprige.',
    steps: [
      {
        say: 'Wähle im Raum Entwurf „Teil nachzeichnen“ und drücke auf die erste Ecke, dann gehe in einer der beiden Richtungen herum.',
      },
      {
        say: 'Wo eine Kante sich biegt, drücke unterwegs auf zwei oder drei Stellen. Die Kurve läuft durch jeden Punkt, den du setzt.',
        drawing: 'points-on-curve',
      },
      {
        say: 'Wo die gedruckte Linie klar ist, lass ihr folgen und drücke nur auf die Ecken. Einen eigenen Punkt kannst du immer setzen.',
      },
      {
        say: 'Ein halbes Teil genügt: Gib an, dass eine Kante Stoffbruch ist, und die andere Hälfte ist da.',
        drawing: 'half-on-fold',
      },
      {
        say: 'Zeichne die Linie nach, die die Vorlage zeigt, und gib an, ob sie Nahtlinie oder Schnittlinie ist. Alte Entwürfe lassen Nahtzugaben oft weg.',
      },
      {
        say: 'Gib an, was jede Kante ist: Naht, Taille, Saum, Bruch, Öffnung. Die Prüfungen von Nähten und Passform ruhen darauf.',
      },
      {
        say: 'Eine gedruckte Zahl ist oft genauer als die Zeichnung. Schreibe sie an ihre Kante, und die beiden werden verglichen.',
      },
      {
        say: 'Lege den Fadenlauf: den geraden Faden des Stoffs, bei den meisten Teilen entlang der vorderen oder hinteren Mitte.',
      },
    ],
  },
  'curved-waist': {
    title: 'Die gebogene Taille',
    why: 'Alte Vorlagen zeichnen die Taille oft gerade. An einen Körper genäht, der zur Hüfte weiter wird, steht eine gerade Taille in der Mitte ab und zieht an den Seiten.',
    steps: [
      {
        say: 'Ein Rock ist von der Taille zur Hüfte fast ein Kegel. Schneide ihn auf und lege ihn flach, und sein oberer Rand ist ein Stück Kreis, keine Gerade.',
        drawing: 'waist-from-cone',
      },
      {
        say: (shownIn) =>
          `Je weiter die Hüfte gegenüber der Taille, desto mehr steigt der Bogen an der Seite. Bei einer Taille von ${roundLength(shownIn, 28, 70)} und einer Hüfte von ${roundLength(shownIn, 38, 95)}, ${roundLength(shownIn, 8, 20)} tief, steigt ein Viertel etwas über ${shownIn === 'in' ? 'einen Zoll' : roundLength(shownIn, 1, 2.5)}.`,
        drawing: 'straight-waist',
      },
      {
        say: 'Der Raum Passform zeichnet den Bogen, den deine Maße brauchen, über die gerade Taille und sagt, wie weit sie auseinanderliegen.',
      },
      {
        say: 'Drücke „Gebogene Taille nehmen“. Sie trifft Mitte und Seitennaht im rechten Winkel, damit die Taille glatt weiterläuft, wo Bahnen sich treffen.',
      },
      {
        say: 'Eine Hüfte, die auf einer Seite höher ist, oder ein hohler Rücken braucht mehr. Stecke es am Probeteil und übertrage die Änderung.',
      },
    ],
  },
  'mock-up': {
    title: 'Das Probeteil',
    why: 'Ein Probeteil aus billigem Stoff findet, was keine Rechnung findet. Was am Körper gesteckt wird, muss zurück in den Schnitt, jede einzelne Nadel.',
    steps: [
      {
        say: 'Schneide es aus Stoff zu, der hängt wie der richtige. Zeichne Nahtlinien, Taille und Mitte auf die rechte Seite.',
      },
      {
        say: 'Nähe mit langen Stichen, lass die Öffnung offen, bügle, und zieh es über das an, was darunter getragen wird.',
      },
      {
        say: 'Stecke an der Naht weg, was zu weit ist, und schlitze und unterlege, was zu eng ist. Stecke nicht über einen Abnäher.',
        drawing: 'pin-and-fold',
      },
      {
        say: 'Schreibe jede Nadel im Raum Probe auf, solange du es noch anhast: welche Kante, wie weit daran, wie viel eingenommen oder ausgelassen.',
      },
      {
        say: (shownIn) =>
          `Was du schreibst, ist das ganze Fältchen oder die Hälfte: Sieh nach, was das Feld verlangt. Ein Fältchen von ${roundLength(shownIn, 1 / 2, 1)} durch beide Lagen nimmt ${roundLength(shownIn, 1 / 4, 0.5)} von jedem Teil.`,
      },
      { say: 'Übertrage jede Änderung, oder lehne sie mit einem Grund ab. Nichts bleibt halb getan.' },
    ],
    care: 'Zähle nach der Anprobe die Nadeln. Schließe Klingen, schneide von der Hand weg, und gib auf das heiße Bügeleisen acht.',
  },
  cloth: {
    title: 'Gerade oder schräg, und wie viel Stoff',
    why: 'Im Schrägfadenlauf hängt Stoff weich und dehnt sich, und er braucht mehr. Lege die Teile auf beide Arten auf, bevor du wählst.',
    steps: [
      {
        say: 'Der gerade Fadenlauf geht an der Webkante entlang. Er dehnt sich am wenigsten, und die meisten Teile hängen nach ihm.',
        drawing: 'grain-ways',
      },
      {
        say: 'Der echte Schrägfadenlauf läuft mit 45°: Falte eine Ecke so, dass die Schnittkante an der Webkante liegt, und der Bruch ist die Schräge.',
        drawing: 'bias-corner',
      },
      {
        say: 'Miss den Stoff zwischen den Webkanten, und wasche und bügle ihn vor dem Messen, wenn er gewaschen werden soll.',
      },
      {
        say: 'Stoff mit Strich, Glanz oder einem Druck mit oben und unten nimmt alle Teile in einer Richtung.',
      },
      {
        say: 'Hänge einen schräg geschnittenen Rock einen Tag aus, bevor du den Saum waagerecht machst: Er senkt sich.',
      },
      {
        say: (shownIn) =>
          `Kaufe etwas mehr. ${shownIn === 'in' ? 'Ein achtel Yard ist' : 'Zehn Zentimeter sind'} billiger als ein fehlender Bund.`,
      },
    ],
    care: 'Für Kindernachtwäsche gibt es Regeln, wie Stoff brennen darf, und für Kordeln an Kinderkleidung auch. Sie sind von Land zu Land verschieden: Sieh deine nach.',
  },
  printing: {
    title: 'In Originalgröße drucken',
    why: (shownIn) =>
      `Programme, die Seiten zeigen, verkleinern gern. Ein auf 97 % verkleinertes Blatt macht aus ${roundLength(shownIn, 38, 95)} Hüfte ${roundLength(shownIn, 37, 92)}.`,
    steps: [
      {
        say: 'Mache die Blätter und drucke das erste allein, mit 100 % oder „Tatsächliche Größe“, nie „an Seite anpassen“.',
      },
      {
        say: 'Miss sein Quadrat mit dem Lineal in beiden Richtungen und schreibe auf, was du abliest. Stimmt es nicht, wird die wahrscheinliche Ursache genannt.',
        drawing: 'test-square',
      },
      { say: 'Drucke den Rest mit denselben Einstellungen, auf demselben Papier.' },
      {
        say: 'Schneide nur an zwei Seiten ab, lege jedes Blatt so auf seinen Nachbarn, dass die Kreuze sich treffen, und klebe.',
        drawing: 'joined-pages',
      },
      { say: 'Miss das Ganze nach: Jedes Teil sagt, wie lang sein Fadenlauf und seine breiteste Stelle sein müssen.' },
      { say: 'Änderst du den Entwurf später, werden nur die Blätter neu gedruckt, die nicht mehr stimmen.' },
    ],
    care: 'Miss nach, bevor du Stoff schneidest. Ein Blatt, das um ein Haar danebenliegt, ist über zehn Blätter einen Fingerbreit daneben.',
  },
  'brown-paper': {
    title: 'Punkt für Punkt auf Packpapier',
    why: 'Ohne Drucker lässt sich ein Schnitt mit dem langen Lineal Punkt für Punkt übertragen, wie die Hefte es meinten.',
    steps: [
      { say: 'Ziehe auf dem Papier eine lange Gerade und setze einen rechten Winkel daran.' },
      {
        say: 'Prüfe den Winkel: 3 ft an der einen Seite und 4 ft an der anderen müssen 5 ft auseinanderliegen.',
        drawing: 'three-four-five',
      },
      {
        say: 'Jeder Punkt des Rasterblatts sagt, wie weit er vom Nullpunkt nach rechts und nach unten liegt. Miss jeden von denselben zwei Kanten, nicht vom letzten Punkt.',
        drawing: 'squares-carried',
      },
      {
        say: 'Hake jeden Punkt ab, wenn er gesetzt ist; der Bildschirm kann einen nach dem anderen in großen Zahlen zeigen.',
      },
      {
        say: 'Verbinde die Punkte: mit dem Lineal bei geraden Kanten; für Kurven biege eine dünne Leiste durch die Punkte, oder stelle ein Maßband hochkant.',
      },
      { say: 'Miss die beiden Prüflängen auf dem Blatt nach. Stimmen sie, stimmt das Ganze.' },
    ],
  },
};

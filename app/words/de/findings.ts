import type { Finding } from '../../../core/check/before-you-cut';
import { WALKING_ROOM } from '../../../core/fit/wearing';
import { BODIES_MEASURED, WAIST_OVER_HIP } from '../../../core/garment/body-figures';
import type { Garment } from '../../../core/garment/garment';
import type { GarmentCloth } from '../../../core/garment/garment-cloth';
import type { GirthName, MeasureName } from '../../../core/garment/measure';
import { finestStep } from '../../../core/units/write-length';
import { locale } from '../language';
import { writeLength, writeNumber } from '../written';
import { clothNames } from './cloth-names';
import { fitWords } from './fit';
import { fieldOf, measureNames } from './measures';
import { pinnedSentence } from './mockup';
import { dateWords, fittedWords } from './paper-sheet';
import { pieceName } from './versions';

/** How many the survey of bodies measured. */
const women = `${BODIES_MEASURED.toLocaleString(locale())} gemessenen Frauen`;

/** A share as people say it: 2,3 %. */
function percent(share: number): string {
  return `${writeNumber(share * 100, share < 0.1 ? 1 : 0)} %`;
}

const hemAt = { front: 'vorn', side: 'an der Seite', back: 'hinten' } as const;

const sides = { left: 'linken', right: 'rechten' } as const;

/** The sentence for a finding, numbers first where there are any. */
export function findingSentence(finding: Finding, garment: Garment): string {
  const length = (mm: number) => writeLength(mm, { shownIn: garment.shownIn });
  const measure = (name: MeasureName) => measureNames[name];
  const girth = (name: GirthName) => levelName(finding, garment) ?? fitWords.girth[name];
  const finely = (mm: number) => writeLength(mm, { shownIn: garment.shownIn, step: finestStep(garment.shownIn) });
  const where = placeName(finding, garment);
  const bend = ({ rise, dip }: { readonly rise: number; readonly dip: number }) =>
    dip !== 0
      ? dip > 0
        ? `zwischen den Nähten ${length(dip)} absinkt`
        : `zwischen den Nähten ${length(-dip)} ansteigt`
      : rise >= 0
        ? `an der Seite ${length(rise)} ansteigt`
        : `an der Seite ${length(-rise)} abfällt`;
  switch (finding.kind) {
    case 'measure-unlikely':
      return `${length(finding.value)} für „${measure(finding.measure)}“: Von ${women} lagen 98 von 100 zwischen ${length(finding.low)} und ${length(finding.high)}. Stimmt das?`;
    case 'waist-over-hip':
      return `Die Taille, ${length(finding.waist)}, ist weiter als die Hüfte, ${length(finding.hip)}. Das war bei ${WAIST_OVER_HIP} von ${women} so; wenn es hier so ist, mach weiter.`;
    case 'lengths-out-of-order':
      return `„${measure(finding.lower)}“ sollte länger sein als „${measure(finding.upper)}“. Eins von beiden stimmt vielleicht nicht.`;
    case 'sides-differ':
      return `${measure(finding.measure)}: Die beiden Seiten unterscheiden sich um ${length(finding.by)}. Miss zur Sicherheit noch einmal.`;
    case 'measure-guessed':
      return `${measure(finding.measure)} ist geschätzt. Nimm das Maß vor dem Zuschneiden.`;
    case 'measure-needed':
      return `Noch nicht gemessen: ${fieldOf(finding.measure)}.`;
    case 'not-squared-up':
      return {
        coincident: 'Zwei der vier Ecken liegen aufeinander. Ziehe jede auf ihre eigene Ecke des Rechtecks.',
        'three-in-line': 'Drei der vier Ecken liegen in einer Linie. Ziehe jede auf ihre eigene Ecke des Rechtecks.',
        crossed:
          'Die vier Ecken überkreuzen sich. Sie gehen reihum: oben links, oben rechts, unten rechts, unten links.',
        concave: 'Eine Ecke liegt zwischen den drei anderen; das kann kein Foto eines Rechtecks zeigen.',
        'too-small':
          'Die vier Ecken liegen zu nah beieinander. Wähle ein größeres Rechteck, etwa den Rahmen der Seite.',
        'side-runs-back':
          'Eine Seite läuft auf sich selbst zurück. Ihre Stellen müssen von Ecke zu Ecke aufeinander folgen; rücke sie auseinander.',
        'sides-cross': 'Die gebogenen Seiten kreuzen sich. Schiebe ihre Stellen zurück an den Rand der Seite.',
        'folds-over':
          'Zwischen diesen gebogenen Seiten würde sich die Seite überschlagen. Schiebe ihre Stellen zurück an den Rand.',
      }[finding.why];
    case 'page-not-true':
      return `Linien, die gerade oder rechtwinklig sein sollten, weichen ${finely(finding.off)} je ${length(finding.over)} ab. Biegt sich die Seite, folge ihren gebogenen Rändern oder ihren gedruckten Quadraten.`;
    case 'shared-scale-missing':
      return `Dieses Bild hat seinen Maßstab von einem anderen (${pictureName(finding.diagramId, garment)}), das noch keinen hat oder nicht von derselben Art ist. Gib jenem eine bekannte Länge oder diesem eine eigene.`;
    case 'halves-not-joined':
      return `Diese Hälfte ist noch nicht an ihre andere (${pictureName(finding.diagramId, garment)}) gelegt: Gib zwei Stellen an, die in beiden zu sehen sind.`;
    case 'halves-apart':
      return `Die gemeinsamen Stellen dieser Hälfte und der anderen (${pictureName(finding.diagramId, garment)}) liegen höchstens ${finely(finding.apart)} auseinander. Sieh nach, ob jede auf demselben Punkt sitzt und ob beide Seiten entzerrt sind.`;
    case 'no-known-length':
      return 'Noch sagt nichts, wie groß die Vorlage ist. Zeichne eine bekannte Länge hinein.';
    case 'one-known-length':
      return 'Der Maßstab ruht auf einer bekannten Länge, und nichts prüft sie. Füge eine zweite hinzu, am besten im rechten Winkel zur ersten.';
    case 'one-direction':
      return `Alle bekannten Längen laufen ${finding.direction === 'across' ? 'quer' : 'längs'}. Eine in der anderen Richtung würde zeigen, ob das Bild gestreckt ist.`;
    case 'known-length-zero':
      return 'Eine bekannte Länge von nichts sagt nichts. Schreibe, wie lang die Linie in Originalgröße ist.';
    case 'known-length-without-line':
      return 'Eine bekannte Länge hat noch keine Linie: Ihre beiden Enden liegen an einer Stelle.';
    case 'known-length-needs-measure':
      return `Eine bekannte Länge ist ein Teil des Maßes „${measure(finding.measure)}“, das noch nicht gemessen ist.`;
    case 'known-length-disagrees':
      return `Die Linie mit ${length(finding.states)} misst hier ${finely(finding.measures)}, ${percent(finding.share)} daneben. ${
        finding.hardlyToScale
          ? 'Ist die Vorlage maßstäblich gezeichnet, und steht jede Zahl an der richtigen Linie?'
          : 'Sieh nach, ob ihre Enden auf den Strichen sitzen.'
      }`;
    case 'stretched':
      return `Quer und längs unterscheiden sich um ${percent(finding.share)}, das sind ${length(finding.slip)} je ${length(finding.over)}. Jede Richtung richtet sich nach ihren eigenen Längen, das ist also berücksichtigt; achte darauf, dass die Zahlen an den richtigen Linien stehen.`;
    case 'short-known-length':
      return `Die längste bekannte Länge ist kurz für diese Vorlage: Ein Zittern der Hand an ihren Enden wird zu ${length(finding.grows)} je ${length(finding.over)}. Nimm eine längere, wenn es eine gibt.`;
    case 'no-piece':
      return 'Noch gibt es kein Schnittteil. Zeichne eines nach der Vorlage.';
    case 'no-ring':
      return 'Niemand hat gesagt, welche Teile um den Körper gehen. Hake sie im Raum Passform an.';
    case 'no-waist-edge':
      return `${where}: Keine Kante ist als Taille benannt, deshalb lässt es sich nicht um den Körper messen.`;
    case 'girth-measure-missing':
      return `„${fieldOf(finding.measure)}“ im Raum Maße ist noch leer, deshalb lassen sich die Teile dort nicht prüfen.`;
    case 'panel-missing':
      return `${girth(finding.girth)}: Die Teile messen ringsum ${length(finding.total)}, gewollt sind ${length(finding.wanted)}: etwa ${
        { 2: 'die Hälfte', 3: 'ein Drittel', 4: 'ein Viertel' }[finding.parts]
      }. Wahrscheinlich fehlt eine Bahn, oder ein Teil wird öfter zugeschnitten, als dabeisteht.`;
    case 'girth-too-small':
      return finding.weight === 'stop'
        ? `${length(finding.body - finding.total)} zu eng zum Schließen (${girth(finding.girth)}): Die Teile messen ringsum ${length(finding.total)}, der Körper ${length(finding.body)}.`
        : `${length(finding.wanted - finding.total)} zu wenig für die gewollte Mehrweite (${girth(finding.girth)}): Die Teile messen ringsum ${length(finding.total)}, gewollt sind ${length(finding.wanted)}.`;
    case 'girth-too-large':
      return `${length(finding.total - finding.wanted)} zu viel (${girth(finding.girth)}): Die Teile messen ringsum ${length(finding.total)}, gewollt sind ${length(finding.wanted)}.`;
    case 'side-uneven':
      return finding.weight === 'stop'
        ? `${length(finding.body - finding.total)} zu eng auf der ${sides[finding.side]} Seite (${girth(finding.girth)}): Die Teile dieser Seite ergeben ${length(finding.total)}, ihre Hälfte ist ${length(finding.body)}.`
        : `${length(finding.wanted - finding.total)} zu wenig für die gewollte Mehrweite auf der ${sides[finding.side]} Seite (${girth(finding.girth)}): Die Teile dieser Seite ergeben ${length(finding.total)}, gewollt sind ${length(finding.wanted)}.`;
    case 'level-below-piece':
      return `${length(finding.depth)} unter der Taille (${girth(finding.girth)}) ist schon zu Ende: ${piecesEnd(finding.pieceIds, garment)}. Der Umfang lässt sich dort nicht prüfen.`;
    case 'straight-waist':
      return `${where}: Die Taille braucht einen Bogen, der ${bend(finding)}. Gezeichnet misst sie ${length(finding.straight)}, so wie der Körper sie braucht ${length(finding.curved)}.`;
    case 'not-worked-out':
      return `${where}: Eine Kante ließ sich nicht ausrechnen und steht von Punkt zu Punkt da; das ist ein Fehler von Inchsquare. Bewege einen ihrer Punkte, oder nimm die letzte Änderung zurück; schneide nicht so zu.`;
    case 'check-broke-off':
      return 'Eine der Prüfungen ist abgebrochen, das ist ein Fehler von Inchsquare: Ob dort etwas offen ist, lässt sich nicht sagen. Nimm die letzte Änderung zurück, oder prüfe vor dem Zuschneiden von Hand.';
    case 'outline-crosses':
      return `${where}: Zwei Kanten kreuzen sich. Bewege einen Punkt, bis der Umriss einmal ringsum läuft.`;
    case 'figure-unsettled':
      return `${where}: gezeichnet ${length(finding.drawn)}, gedruckt ${length(finding.stated)}. Gib an, was davon gilt.`;
    case 'figure-not-met':
      return `${where}: Es gelten die gedruckten ${length(finding.stated)}, gezeichnet sind aber ${length(finding.drawn)}. Richte die Zeichnung danach.`;
    case 'figures-clash':
      return `${nameOf(finding)}: ${finding.allPrinted ? 'Die gedruckten Zahlen ergeben' : 'Die Kanten, gedruckt oder gezeichnet, ergeben'} ${length(finding.sum)} (${finding.lengths
        .map((part) => (part.times === 1 ? length(part.length) : `${part.times} × ${length(part.length)}`))
        .join(
          ' + ',
        )}), das Ganze sagt ${length(finding.whole)}: ${finely(Math.abs(finding.sum - finding.whole))} auseinander. Gib an, was gilt.`;
    case 'whole-not-met':
      return `${nameOf(finding)}: Es gilt das gedruckte Ganze von ${length(finding.whole)}, gezeichnet sind die Kanten zusammen aber ${finely(finding.drawn)}. Richte die Zeichnung danach.`;
    case 'seam-figures-clash':
      return `${where}: Was für diese Seite der Naht gedruckt ist, ergibt ${length(finding.one)}, für die andere Seite ${length(finding.other)}: ${finely(Math.abs(finding.one - finding.other))} auseinander${
        finding.ease === 0 ? '' : `, und ${finely(Math.abs(finding.ease))} sind als Mehrweite gemeint`
      }. Eine der Zahlen ist vielleicht falsch gelesen.`;
    case 'figures-cannot-close':
      return `${where}: Die gedruckten ${length(finding.stated)} sind länger als alle anderen Kanten des Teils zusammen, ${length(finding.others)}. So kann es sich nicht schließen; sieh die Zahlen noch einmal an.`;
    case 'hem-narrow':
      return `Der Saum misst ringsum ${length(finding.sweep)}, die Hüfte ${length(finding.hip)}. Mit weniger als ${length(WALKING_ROOM.least)} mehr am Saum geht es sich schwer; plane einen Schlitz oder eine Falte.`;
    case 'no-opening':
      return `Die Taille, ${length(finding.waist)}, kommt nicht über die Hüfte, ${length(finding.hip)}. Lass eine Naht oben offen, mindestens ${length(finding.depth)} tief: Das geht im Raum Passform.`;
    case 'opening-short':
      return `${where}: Die Öffnung ist ${length(finding.opening)} lang, die Hüfte braucht ${length(finding.needed)}, um hindurchzukommen. Mache sie länger.`;
    case 'seam-off':
      return `${where}: ${finely(Math.abs(finding.beyondEase))} zu ${finding.beyondEase > 0 ? 'lang' : 'kurz'} für das, woran es genäht wird. Es ergibt ${finely(finding.one)}, die andere Seite ${finely(finding.other)}${
        finding.ease === 0 ? '' : `, und ${finely(Math.abs(finding.ease))} sind als Unterschied gemeint`
      }. Gleiche die Naht aus.`;
    case 'seam-notches-off':
      return `${where}: ${[
        ...(finding.off > 0
          ? [`${notches(finding.off)} an der Naht bis zu ${finely(finding.most)} vom Gegenstück entfernt`]
          : []),
        ...(finding.alone > 0 ? [`${notches(finding.alone)} ohne Gegenstück`] : []),
      ].join(' und ')}. Setze sie von einer Seite auf die andere über.`;
    case 'edge-unpaired':
      return finding.edges.length === 1
        ? `${where}: Diese Nahtkante ist noch an nichts genäht. Paare sie mit ihrem Gegenstück, damit beide im Blick bleiben.`
        : `${finding.edges.length} Nahtkanten sind noch an nichts genäht, die erste davon: ${where}. Paare jede mit ihrem Gegenstück, damit beide im Blick bleiben.`;
    case 'pinned-not-carried': {
      const { mockup, pinned } = finding;
      const changes = pinned.length === 1 ? '1 gesteckte Änderung ist' : `${pinned.length} gesteckte Änderungen sind`;
      return `${mockup.name}: ${changes} weder übertragen noch abgelehnt. ${pinned.map((change) => pinnedSentence(garment, change)).join(' ')}`;
    }
    case 'waist-peak':
      return `${where}: ${degrees(Math.abs(finding.off))} ${finding.off > 0 ? 'Spitze' : 'Kerbe'}, wo die Taille ${joinedTo(finding, garment)}. Gleiche die Ecken aus, bis sie glatt weiterläuft.`;
    case 'no-way-on':
      return `Ringsum geschlossen, misst es an der engsten Stelle ${length(finding.narrowest)} und kommt nicht über die Schultern, etwa ${length(finding.shoulders)}${finding.hip === undefined ? '' : `, und nicht über die Hüfte, ${length(finding.hip)}`}. Plane dort eine Öffnung.`;
    case 'casing-narrow':
      return `Die Taille mit Tunnelzug öffnet sich auf ${length(finding.casing)}, die Hüfte misst ${length(finding.hip)}. Schneide sie mindestens so weit wie die Hüfte zu, oder plane eine Öffnung.`;
    case 'hem-shows':
      return `${length(finding.length)} lang ${hemAt[finding.at]}, unter ${length(finding.outer)}: Es soll ${length(finding.shorterBy)} kürzer bleiben, kürze es dort also um ${length(finding.length - finding.outer + finding.shorterBy)}.`;
    case 'thigh-narrow':
      return `${length(finding.depth)} unter der Taille misst es ringsum ${length(finding.total)}, und beide Oberschenkel nebeneinander brauchen ${length(finding.needed)}. Mache es dort weiter.`;
    case 'drawn-as-not-known':
      return `${where}: Enthält die Zeichnung Nahtzugaben? Gib es an, bevor zugeschnitten wird.`;
    case 'allowance-not-said':
      return `${where}: ${finding.edges === 1 ? '1 Kante hat' : `${finding.edges} Kanten haben`} noch keine Nahtzugabe. Gib jeder eine, 0, wo keine ist.`;
    case 'fold-not-cut-on':
      return `${where}: Eine Kante ist ein Stoffbruch, das Teil wird aber nicht im Stoffbruch zugeschnitten. So würde nur die Hälfte davon zugeschnitten.`;
    case 'no-grain':
      return `${where}: kein Fadenlauf. Setze einen, damit es gerade auf dem Stoff liegt.`;
    case 'no-name':
      return 'Ein Teil hat keinen Namen. Benenne es, damit seine Blätter sich unterscheiden lassen.';
    case 'scale-not-proved':
      return 'Der gedruckte Maßstab ist noch nicht geprüft. Drucke im Raum Papier das Prüfblatt oder das erste Blatt und schreibe auf, was das Lineal sagt.';
    case 'scale-proof-stale':
      return finding.why === 'paper'
        ? 'Der gedruckte Maßstab wurde auf anderem Papier geprüft. Drucke das Prüfblatt oder das erste Blatt noch einmal und miss nach.'
        : 'Der gedruckte Maßstab wurde geprüft, bevor die Blätter so berichtigt wurden wie jetzt. Drucke das Prüfblatt oder das erste Blatt noch einmal und miss nach.';
    case 'scale-off':
      return `${finely(finding.across)} in der Breite und ${finely(finding.down)} in der Höhe wurden gemessen statt ${length(finding.wanted.across)} und ${length(finding.wanted.down)}: ${scaleOffWords(finding)} Schneide nicht nach diesen Blättern zu.`;
    case 'lay-overlaps':
      return `${clothNames.cloth(clothOf(finding, garment)?.name ?? '')}: ${finding.count === 1 ? '1 Stelle' : `${finding.count} Stellen`} im Zuschneideplan, wo Teile überlappen oder nicht liegen, wie sie müssen.`;
    case 'cloth-short':
      return `${clothNames.cloth(clothOf(finding, garment)?.name ?? '')}: ${length(finding.short)} zu kurz, der Zuschneideplan braucht ${length(finding.needed)}.`;
    case 'lay-stale': {
      const names = finding.ids.map((id) =>
        clothNames.laid(id, garment.pieces, clothOf(finding, garment)?.strips ?? []),
      );
      const what = [...(finding.cloth ? ['der Stoff'] : []), ...names];
      return `${clothNames.cloth(clothOf(finding, garment)?.name ?? '')}: Seit dem Auflegen geändert: ${listed(what)}. Lege neu auf.`;
    }
    case 'pages-out-of-date':
      return pagesOutOfDate(finding, where);
    case 'squares-out-of-date':
      return `${where}: Das Rasterblatt vom ${dateWords(finding.date)} ist veraltet, das Teil wurde seitdem geändert. Mache es neu, bevor du danach zeichnest, und bessere aus, was schon gezeichnet ist.`;
    case 'printed-piece-gone':
      return `${finding.name || 'Ein Teil'}: am ${dateWords(finding.date)} gedruckt und nicht mehr im Kleidungsstück. Lege das Papier weg.`;
    case 'changed-since-cut':
      return `Der Stoff wurde am ${dateWords(finding.date)} nach Fassung ${finding.version} zugeschnitten. Seitdem geändert: ${listed(
        finding.pieceIds.map((id) => pieceName(id, garment)),
      )}. Sieh nach, ob das Zugeschnittene noch zu brauchen ist.`;
  }
}

function scaleOffWords({ cause, across, down, wanted }: Finding & { readonly kind: 'scale-off' }): string {
  const share = `${writeNumber((100 * (across + down)) / (wanted.across + wanted.down), 1)} %`;
  switch (cause.kind) {
    case 'fitted':
      return `${fittedWords(cause)} (${share}). Wähle das Papier, das du hast, oder drucke in tatsächlicher Größe.`;
    case 'into-margins':
      return `${fittedWords(cause)} (${share}). Drucke in tatsächlicher Größe.`;
    case 'uneven':
      return `${fittedWords(cause)}.`;
    case 'unknown':
      return `${share}. Drucke noch einmal mit 100 % oder „Tatsächliche Größe“, ohne an die Seite anzupassen.`;
  }
}

/** Pages B1 and B2 of the front, and what is to be done about them. */
function pagesOutOfDate(
  { pages, added, gone, date }: Finding & { readonly kind: 'pages-out-of-date' },
  piece: string,
): string {
  const since = `seit dem Druck am ${dateWords(date)} geändert`;
  const named = (names: readonly string[], one: string, more: string) =>
    `${names.length === 1 ? 'Blatt' : 'Blätter'} ${listed(names)} ${names.length === 1 ? one : more}`;
  return [
    pages.length > 0
      ? `${piece}: ${named(pages, 'ist', 'sind')} veraltet, das Teil wurde ${since}.`
      : `${piece}: ${since}.`,
    ...(added.length > 0 ? [`${named(added, 'kommt', 'kommen')} dazu.`] : []),
    ...(gone.length > 0 ? [`${named(gone, 'wird', 'werden')} nicht mehr gebraucht.`] : []),
    'Mache die veralteten Blätter neu, bevor du danach zuschneidest.',
  ].join(' ');
}

/** Eins, zwei und drei. */
function listed(names: readonly string[]): string {
  return names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} und ${names.at(-1)}`;
}

/** 1 Knips, 3 Knipse. */
function notches(count: number): string {
  return `${count} ${count === 1 ? 'Knips' : 'Knipse'}`;
}

/** An angle as it is read off a protractor. */
function degrees(angle: number): string {
  return `${writeNumber((angle * 180) / Math.PI, 1)}°`;
}

/** What the waist is joined to at a place that is not smooth. */
function joinedTo({ place, otherPieceId }: Finding & { readonly kind: 'waist-peak' }, garment: Garment): string {
  if (place.kind === 'edge' && place.pieceId === otherPieceId) return 'auf ihr Spiegelbild trifft';
  return `auf das Teil daneben trifft (${garment.pieces.find(({ id }) => id === otherPieceId)?.name || 'ohne Namen'})`;
}

/** What she calls the level a finding is about, where she has named it. */
function levelName({ place }: Finding, garment: Garment): string | undefined {
  if (place.kind !== 'ring') return undefined;
  const ring = garment.rings.find(({ id }) => id === place.ringId);
  return ring?.levels.find(({ id }) => id === place.levelId)?.name;
}

/** Pieces by name: "Vorderteil, Rückenteil und Passe". */
function piecesEnd(pieceIds: readonly string[], garment: Garment): string {
  return listed(pieceIds.map((id) => garment.pieces.find((piece) => piece.id === id)?.name || 'ein Teil'));
}

/** The cloth a finding is about. */
function clothOf({ place }: Finding, garment: Garment): GarmentCloth | undefined {
  return place.kind === 'cloth' ? garment.cloths?.find(({ id }) => id === place.clothId) : undefined;
}

function pictureName(diagramId: string, garment: Garment): string {
  return garment.diagrams.find(({ id }) => id === diagramId)?.name.trim() || 'ohne Namen';
}

function nameOf({ name }: { readonly name: string }): string {
  return name.trim() === '' ? 'Eine Zahl für mehrere Kanten' : name;
}

/** What a finding is about, by name: a piece, or an edge of one. */
function placeName({ place }: Finding, garment: Garment): string {
  if (place.kind !== 'piece' && place.kind !== 'edge') return '';
  const piece = garment.pieces.find((one) => one.id === place.pieceId);
  const name = piece?.name || 'Ein Teil';
  if (place.kind === 'piece') return name;
  const edge = piece?.edges.find((one) => one.id === place.edgeId);
  return edge?.name ? `${name}, ${edge.name}` : name;
}

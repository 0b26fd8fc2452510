import type { Finding } from '../../../core/check/before-you-cut';
import { WALKING_ROOM } from '../../../core/fit/wearing';
import { BODIES_MEASURED, WAIST_OVER_HIP } from '../../../core/garment/body-figures';
import type { Garment } from '../../../core/garment/garment';
import type { GarmentCloth } from '../../../core/garment/garment-cloth';
import type { GirthName, MeasureName } from '../../../core/garment/measure';
import { finestStep } from '../../../core/units/write-length';
import { writeLength } from '../written';
import { clothNames } from './cloth-names';
import { fitWords } from './fit';
import { fieldOf, measureNames } from './measures';
import { pinnedSentence } from './mockup';
import { dateWords, fittedWords } from './paper-sheet';
import { pieceName } from './versions';

/** How many the survey of bodies measured. */
const women = `${BODIES_MEASURED.toLocaleString('en-GB')} women`;

/** A share as people say it: 2.3 %. */
function percent(share: number): string {
  return `${(share * 100).toFixed(share < 0.1 ? 1 : 0)} %`;
}

/** The sentence for a finding, numbers first where there are any. */
export function findingSentence(finding: Finding, garment: Garment): string {
  const length = (mm: number) => writeLength(mm, { shownIn: garment.shownIn });
  const measure = (name: MeasureName) => measureNames[name].toLowerCase();
  const girth = (name: GirthName) => levelName(finding, garment) ?? fitWords.girth[name].toLowerCase();
  const finely = (mm: number) => writeLength(mm, { shownIn: garment.shownIn, step: finestStep(garment.shownIn) });
  const where = placeName(finding, garment);
  const bend = ({ rise, dip }: { readonly rise: number; readonly dip: number }) =>
    dip !== 0
      ? dip > 0
        ? `dips ${length(dip)} between the seams`
        : `rises ${length(-dip)} between the seams`
      : rise >= 0
        ? `rises ${length(rise)} at the side`
        : `falls ${length(-rise)} at the side`;
  switch (finding.kind) {
    case 'measure-unlikely':
      return `${length(finding.value)} for ${measure(finding.measure)}: of ${women} measured, 98 in 100 lay between ${length(finding.low)} and ${length(finding.high)}. Is it right?`;
    case 'waist-over-hip':
      return `The waist, ${length(finding.waist)}, is larger than the hip, ${length(finding.hip)}. That was so for ${WAIST_OVER_HIP} of ${women} measured; if it is so here, go on.`;
    case 'lengths-out-of-order':
      return `${measureNames[finding.lower]} should be longer than ${measure(finding.upper)}. One of them may be mistaken.`;
    case 'sides-differ':
      return `The two sides of ${measure(finding.measure)} differ by ${length(finding.by)}. Measure once more to be sure.`;
    case 'measure-guessed':
      return `${measureNames[finding.measure]} is a guess. Take the measure before you cut.`;
    case 'measure-needed':
      return `${fieldOf(finding.measure)} has not been measured yet.`;
    case 'not-squared-up':
      return {
        coincident: 'Two of the four corners lie on one another. Drag each onto its own corner of the rectangle.',
        'three-in-line': 'Three of the four corners lie in one line. Drag each onto its own corner of the rectangle.',
        crossed: 'The four corners cross over. They go round: top left, top right, bottom right, bottom left.',
        concave: 'One corner lies inside the other three, which no photo of a rectangle can show.',
        'too-small':
          'The four corners lie too close together. Choose a larger rectangle, such as the frame of the page.',
        'side-runs-back':
          'A side runs back on itself. Its places must follow one another from corner to corner; move them apart.',
        'sides-cross': 'The curved sides cross one another. Move their places back to the edge of the page.',
        'folds-over': 'Between these curved sides the page would fold over itself. Move their places back to its edge.',
      }[finding.why];
    case 'page-not-true':
      return `Lines that should be straight or square are ${finely(finding.off)} off over ${length(finding.over)}. If the page bends, follow its curved sides or its printed squares.`;
    case 'shared-scale-missing':
      return `This picture has its scale from ${pictureName(finding.diagramId, garment)}, which has none yet, or is not of the same kind. Give that one a known length, or this one its own.`;
    case 'halves-not-joined':
      return `This half is not laid onto ${pictureName(finding.diagramId, garment)} yet: give two places that are seen in both.`;
    case 'halves-apart':
      return `The matching places of this half and ${pictureName(finding.diagramId, garment)} lie ${finely(finding.apart)} apart at most. Look whether each is on the same spot, and whether both pages are squared up.`;
    case 'no-known-length':
      return 'Nothing says yet how large the diagram is. Draw a known length on it.';
    case 'one-known-length':
      return 'The scale rests on one known length, and nothing checks it. Add a second, best at right angles to the first.';
    case 'one-direction':
      return `All the known lengths run ${finding.direction}. One that runs the other way would show whether the picture is stretched.`;
    case 'known-length-zero':
      return 'A known length of nothing says nothing. Write how long the line is at full size.';
    case 'known-length-without-line':
      return 'A known length has no line yet: both its ends lie in one place.';
    case 'known-length-needs-measure':
      return `A known length is a share of the ${measure(finding.measure)}, which has not been measured yet.`;
    case 'known-length-disagrees':
      return `The line said to be ${length(finding.states)} measures ${finely(finding.measures)} here, ${percent(finding.share)} off. ${
        finding.hardlyToScale
          ? 'Is the diagram drawn to scale, and is each figure on the right line?'
          : 'Look whether its ends sit on the marks.'
      }`;
    case 'stretched':
      return `Across and down differ by ${percent(finding.share)}, which is ${length(finding.slip)} over ${length(finding.over)}. Each way is scaled by its own lengths, so this is allowed for; make sure the figures are on the right lines.`;
    case 'short-known-length':
      return `The longest known length is short for this diagram: a slip of the hand at its ends becomes ${length(finding.grows)} over ${length(finding.over)}. Use a longer one if there is any.`;
    case 'no-piece':
      return 'There is no piece yet. Trace one over the diagram.';
    case 'no-ring':
      return 'Nobody has said which pieces go round the body. Tick them in the Fit room.';
    case 'no-waist-edge':
      return `${where}: no edge is named as the waist, so it cannot be measured round the body.`;
    case 'girth-measure-missing':
      return `“${fieldOf(finding.measure)}” of the Wearer room is still empty, so the pieces cannot be checked there.`;
    case 'panel-missing':
      return `The pieces go ${length(finding.total)} round the ${girth(finding.girth)}, where ${length(finding.wanted)} is wanted: about ${
        { 2: 'half', 3: 'a third', 4: 'a quarter' }[finding.parts]
      }. A panel is probably missing, or a piece is cut more often than it says.`;
    case 'girth-too-small':
      return finding.weight === 'stop'
        ? `${length(finding.body - finding.total)} too small to close at the ${girth(finding.girth)}: the pieces go ${length(finding.total)} round, the body is ${length(finding.body)}.`
        : `${length(finding.wanted - finding.total)} short of the ease wanted at the ${girth(finding.girth)}: the pieces go ${length(finding.total)} round, ${length(finding.wanted)} is wanted.`;
    case 'girth-too-large':
      return `${length(finding.total - finding.wanted)} over at the ${girth(finding.girth)}: the pieces go ${length(finding.total)} round, ${length(finding.wanted)} is wanted.`;
    case 'side-uneven':
      return finding.weight === 'stop'
        ? `${length(finding.body - finding.total)} too small on the ${finding.side} side at the ${girth(finding.girth)}: the pieces of that side come to ${length(finding.total)}, her half is ${length(finding.body)}.`
        : `${length(finding.wanted - finding.total)} short of the ease wanted on the ${finding.side} side at the ${girth(finding.girth)}: the pieces of that side come to ${length(finding.total)}, ${length(finding.wanted)} is wanted.`;
    case 'level-below-piece':
      return `${length(finding.depth)} down, at the ${girth(finding.girth)}, ${piecesEnd(finding.pieceIds, garment)} already ended, so the girth cannot be checked there.`;
    case 'straight-waist':
      return `${where}: the waist needs a curve that ${bend(finding)}. It is ${length(finding.straight)} as drawn and ${length(finding.curved)} as the body needs it.`;
    case 'not-worked-out':
      return `${where}: an edge could not be worked out and is shown from point to point, which is a fault of Inchsquare. Move one of its points, or take back the last change; do not cut it so.`;
    case 'check-broke-off':
      return 'One of the checks broke off, which is a fault of Inchsquare: it cannot say whether anything is open there. Take back the last change, or check by hand before cutting.';
    case 'outline-crosses':
      return `${where}: two edges cross. Move a point until the outline runs round once.`;
    case 'figure-unsettled':
      return `${where}: drawn ${length(finding.drawn)}, printed ${length(finding.stated)}. Say which of them rules.`;
    case 'figure-not-met':
      return `${where}: the printed ${length(finding.stated)} rules, but it is drawn ${length(finding.drawn)}. Make the drawing obey.`;
    case 'figures-clash':
      return `${nameOf(finding)}: ${finding.allPrinted ? 'the printed figures add to' : 'the edges, printed or as drawn, add to'} ${length(finding.sum)} (${finding.lengths
        .map((part) => (part.times === 1 ? length(part.length) : `${part.times} × ${length(part.length)}`))
        .join(
          ' + ',
        )}), the whole says ${length(finding.whole)}: ${finely(Math.abs(finding.sum - finding.whole))} apart. Say which rules.`;
    case 'whole-not-met':
      return `${nameOf(finding)}: the printed whole of ${length(finding.whole)} rules, but the edges are drawn ${finely(finding.drawn)} together. Make the drawing obey.`;
    case 'seam-figures-clash':
      return `${where}: what is printed for this side of the seam adds to ${length(finding.one)}, for the other side to ${length(finding.other)}: ${finely(Math.abs(finding.one - finding.other))} apart${
        finding.ease === 0 ? '' : `, and ${finely(Math.abs(finding.ease))} is meant as ease`
      }. One of the figures may be misread.`;
    case 'figures-cannot-close':
      return `${where}: the printed ${length(finding.stated)} is longer than all other edges of the piece together, ${length(finding.others)}. They cannot close; look at the figures again.`;
    case 'hem-narrow':
      return `The hem is ${length(finding.sweep)} round and the hip ${length(finding.hip)}. With less than ${length(WALKING_ROOM.least)} more at the hem it is hard to walk; plan a slit or a pleat.`;
    case 'no-opening':
      return `The waist, ${length(finding.waist)}, cannot pass over the hip, ${length(finding.hip)}. Leave the top of a seam open, at least ${length(finding.depth)} deep, in the Fit room.`;
    case 'opening-short':
      return `${where}: the opening is ${length(finding.opening)} long, and the hips need ${length(finding.needed)} to pass. Make it longer.`;
    case 'seam-off':
      return `${where}: ${finely(Math.abs(finding.beyondEase))} too ${finding.beyondEase > 0 ? 'long' : 'short'} for what it is sewn to. It comes to ${finely(finding.one)}, the other side to ${finely(finding.other)}${
        finding.ease === 0 ? '' : `, and ${finely(Math.abs(finding.ease))} is meant as a difference`
      }. True the seam.`;
    case 'seam-notches-off':
      return `${where}: ${[
        ...(finding.off > 0
          ? [`${counted(finding.off, 'notch')} along the seam up to ${finely(finding.most)} from its partner`]
          : []),
        ...(finding.alone > 0 ? [`${counted(finding.alone, 'notch')} with no partner`] : []),
      ].join(' and ')}. Put them across from one side to the other.`;
    case 'edge-unpaired':
      return finding.edges.length === 1
        ? `${where}: this seam edge is sewn to nothing yet. Pair it with its partner, so that both are watched.`
        : `${finding.edges.length} seam edges are sewn to nothing yet, the first of them ${where}. Pair each with its partner, so that both are watched.`;
    case 'pinned-not-carried': {
      const { mockup, pinned } = finding;
      const changes = pinned.length === 1 ? '1 pinned change is' : `${pinned.length} pinned changes are`;
      return `${mockup.name}: ${changes} neither carried over nor declined. ${pinned.map((change) => pinnedSentence(garment, change)).join(' ')}`;
    }
    case 'waist-peak':
      return `${where}: ${degrees(Math.abs(finding.off))} of a ${finding.off > 0 ? 'peak' : 'notch'} where the waist ${joinedTo(finding, garment)}. True the corners until it runs on smoothly.`;
    case 'no-way-on':
      return `Closed all round, it is ${length(finding.narrowest)} at its narrowest and cannot pass the shoulders, about ${length(finding.shoulders)}${finding.hip === undefined ? '' : `, nor the hip, ${length(finding.hip)}`}. Plan an opening there.`;
    case 'casing-narrow':
      return `The drawn-up waist opens to ${length(finding.casing)} and the hip is ${length(finding.hip)}. Cut it at least as wide as the hip, or plan an opening.`;
    case 'hem-shows':
      return `${length(finding.length)} long at the ${finding.at}, under ${length(finding.outer)}: it should stay ${length(finding.shorterBy)} shorter, so take up ${length(finding.length - finding.outer + finding.shorterBy)} there.`;
    case 'thigh-narrow':
      return `${length(finding.depth)} down it is ${length(finding.total)} round, and both thighs side by side need ${length(finding.needed)}. Widen it there.`;
    case 'drawn-as-not-known':
      return `${where}: does the drawing include seam allowances? Say so before it is cut.`;
    case 'allowance-not-said':
      return `${where}: ${finding.edges === 1 ? '1 edge has' : `${finding.edges} edges have`} no allowance yet. Give each one, 0 where there is none.`;
    case 'fold-not-cut-on':
      return `${where}: one edge is a fold of the cloth, but the piece is not cut on the fold. So only half of it would be cut.`;
    case 'no-grain':
      return `${where}: no grain line. Place one, so that it is laid straight on the cloth.`;
    case 'no-name':
      return 'A piece has no name. Name it, so that its pages can be told apart.';
    case 'scale-not-proved':
      return 'The printed scale is not proved yet. Print the check sheet in the Paper room, or the first page, and write down what the ruler says.';
    case 'scale-proof-stale':
      return finding.why === 'paper'
        ? 'The printed scale was proved on other paper. Print the check sheet or the first page again and measure it.'
        : 'The printed scale was proved before the pages were corrected as they are now. Print the check sheet or the first page again and measure it.';
    case 'scale-off':
      return `${finely(finding.across)} across and ${finely(finding.down)} down were measured instead of ${length(finding.wanted.across)} and ${length(finding.wanted.down)}: ${scaleOffWords(finding)} Do not cut from these pages.`;
    case 'lay-overlaps':
      return `${clothNames.cloth(clothOf(finding, garment)?.name ?? '')}: ${finding.count === 1 ? '1 place' : `${finding.count} places`} in the lay where pieces overlap or do not lie as they must.`;
    case 'cloth-short':
      return `${clothNames.cloth(clothOf(finding, garment)?.name ?? '')} is ${length(finding.short)} short: the lay takes ${length(finding.needed)}.`;
    case 'lay-stale': {
      const names = finding.ids.map((id) =>
        clothNames.laid(id, garment.pieces, clothOf(finding, garment)?.strips ?? []),
      );
      const what = [...(finding.cloth ? ['the cloth'] : []), ...names];
      return `${clothNames.cloth(clothOf(finding, garment)?.name ?? '')}: ${listed(what)} changed since it was laid. Lay it again.`;
    }
    case 'pages-out-of-date':
      return pagesOutOfDate(finding, where);
    case 'squares-out-of-date':
      return `The squares sheet of ${where}, made on ${dateWords(finding.date)}, is out of date: the piece was changed since. Make it anew before you draw from it, and mend what was drawn.`;
    case 'printed-piece-gone':
      return `${finding.name || 'A piece'} was printed on ${dateWords(finding.date)} and is not in the garment any more. Put its paper away.`;
    case 'changed-since-cut':
      return `The cloth was cut from version ${finding.version} on ${dateWords(finding.date)}. ${listed(
        finding.pieceIds.map((id) => pieceName(id, garment)),
      )} ${finding.pieceIds.length === 1 ? 'has' : 'have'} been changed since: look whether what is cut can still be used.`;
  }
}

function scaleOffWords({ cause, across, down, wanted }: Finding & { readonly kind: 'scale-off' }): string {
  const share = `${((100 * (across + down)) / (wanted.across + wanted.down)).toFixed(1)} %`;
  switch (cause.kind) {
    case 'fitted':
      return `${fittedWords(cause)} (${share}). Choose the paper you have, or print at actual size.`;
    case 'into-margins':
      return `${fittedWords(cause)} (${share}). Print at actual size.`;
    case 'uneven':
      return `${fittedWords(cause)}.`;
    case 'unknown':
      return `${share}. Print again at 100 %, or “actual size”, without fitting to the page.`;
  }
}

/** Pages B1 and B2 of the front, and what is to be done about them. */
function pagesOutOfDate(
  { pages, added, gone, date }: Finding & { readonly kind: 'pages-out-of-date' },
  piece: string,
): string {
  const since = `since it was printed on ${dateWords(date)}`;
  const named = (names: readonly string[]) => `${names.length === 1 ? 'Page' : 'Pages'} ${listed(names)}`;
  const is = (names: readonly string[]) => (names.length === 1 ? 'is' : 'are');
  return [
    ...(pages.length > 0
      ? [`${named(pages)} of ${piece} ${is(pages)} out of date: the piece was changed ${since}.`]
      : [`${piece} was changed ${since}.`]),
    ...(added.length > 0 ? [`${named(added)} ${is(added)} wanted besides.`] : []),
    ...(gone.length > 0 ? [`${named(gone)} ${is(gone)} not needed any more.`] : []),
    'Make the pages that are out of date anew before you cut from them.',
  ].join(' ');
}

/** One, two and three. */
function listed(names: readonly string[]): string {
  return names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}

/** One notch, 3 notches. */
function counted(count: number, word: 'notch'): string {
  return `${count} ${word}${count === 1 ? '' : 'es'}`;
}

/** An angle as it is read off a protractor. */
function degrees(angle: number): string {
  return `${((angle * 180) / Math.PI).toFixed(1)}°`;
}

/** What the waist is joined to at a place that is not smooth. */
function joinedTo({ place, otherPieceId }: Finding & { readonly kind: 'waist-peak' }, garment: Garment): string {
  if (place.kind === 'edge' && place.pieceId === otherPieceId) return 'meets its mirror image';
  return `is joined to ${garment.pieces.find(({ id }) => id === otherPieceId)?.name || 'its neighbour'}`;
}

/** What she calls the level a finding is about, where she has named it. */
function levelName({ place }: Finding, garment: Garment): string | undefined {
  if (place.kind !== 'ring') return undefined;
  const ring = garment.rings.find(({ id }) => id === place.ringId);
  return ring?.levels.find(({ id }) => id === place.levelId)?.name;
}

/** Pieces by name as they have ended: "Front has", "Front, Back and Yoke have". */
function piecesEnd(pieceIds: readonly string[], garment: Garment): string {
  const names = pieceIds.map((id) => garment.pieces.find((piece) => piece.id === id)?.name || 'a piece');
  return `${listed(names)} ${names.length === 1 ? 'has' : 'have'}`;
}

/** The cloth a finding is about. */
function clothOf({ place }: Finding, garment: Garment): GarmentCloth | undefined {
  return place.kind === 'cloth' ? garment.cloths?.find(({ id }) => id === place.clothId) : undefined;
}

/** What a finding is about, by name: a piece, or an edge of one. */
function pictureName(diagramId: string, garment: Garment): string {
  return garment.diagrams.find(({ id }) => id === diagramId)?.name.trim() || 'the other picture';
}

function nameOf({ name }: { readonly name: string }): string {
  return name.trim() === '' ? 'A figure for several edges' : name;
}

function placeName({ place }: Finding, garment: Garment): string {
  if (place.kind !== 'piece' && place.kind !== 'edge') return '';
  const piece = garment.pieces.find((one) => one.id === place.pieceId);
  const name = piece?.name || 'A piece';
  if (place.kind === 'piece') return name;
  const edge = piece?.edges.find((one) => one.id === place.edgeId);
  return edge?.name ? `${name}, ${edge.name}` : name;
}

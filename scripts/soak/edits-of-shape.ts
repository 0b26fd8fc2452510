import { levelHem } from '../../core/fit/level-hem';
import { ringPieces } from '../../core/fit/round-body';
import { takeInSeam } from '../../core/fit/take-in-seam';
import { waistFromLengths } from '../../core/fit/waist-from-lengths';
import { withNewPieces } from '../../core/garment/with-new-pieces';
import { pieceOf } from '../../core/garment/with-piece';
import { bandPieces } from '../../core/seams/band-from-pattern';
import { edgeToLength } from '../../core/seams/edge-to-length';
import { joinedPanels } from '../../core/seams/joined-panels';
import { trueSeam } from '../../core/seams/true-seam';
import { bowToLength } from '../../core/shaping/bow-edge';
import { closeDart, moveDart } from '../../core/shaping/dart-move';
import { placeDart } from '../../core/shaping/dart-place';
import { splitDart } from '../../core/shaping/dart-split';
import { dartToGathers, dartToSeamEase } from '../../core/shaping/dart-to-ease';
import { dartToGore } from '../../core/shaping/dart-to-gore';
import { addGathers, gatherEdge } from '../../core/shaping/gathers';
import { leftAndRight } from '../../core/shaping/half-pieces';
import { lengthenAcross, lengthenAtHem } from '../../core/shaping/lengthen';
import { lengthenRing } from '../../core/shaping/lengthen-garment';
import { onTheFold } from '../../core/shaping/on-the-fold';
import { addPleats, pleatEdge } from '../../core/shaping/pleats';
import { slash } from '../../core/shaping/slashes';
import { spread } from '../../core/shaping/spread';
import { takeIn } from '../../core/shaping/take-in';
import { drawWaist } from '../../core/shaping/waist-ways';
import { type Chosen, type EditKind, edit, pieceEdit } from './edit-kind';

const placeOn = (c: Chosen) => ({ edgeId: c.edge.id, along: c.mm(0, 400) });
const waistOf = ({ piece, edge }: Chosen) => (piece.edges.find(({ role }) => role === 'waist') ?? edge).id;
const ringId = ({ ring }: Chosen) => ring?.id ?? 'no-ring';
const seamId = ({ garment, pick }: Chosen) => (garment.seams?.length ? pick(garment.seams).id : 'no-seam');
const lengths = (c: Chosen) => ({
  front: c.mm(950, 1050),
  right: c.mm(950, 1050),
  back: c.mm(950, 1050),
  left: c.mm(950, 1050),
});

/** Changes of shape: the Reshape, Seams and Fit rooms. */
export const editsOfShape: Readonly<Record<string, EditKind>> = {
  bow: pieceEdit(
    (c) => ({ id: c.edge.id, length: c.mm(50, 900) }),
    (piece, { id, length }) => bowToLength(piece, id, length),
  ),
  edgeToLength: pieceEdit(
    (c) => ({ id: c.edge.id, length: c.mm(50, 900), end: c.pick(['start', 'end'] as const) }),
    (piece, { id, ...wish }) => edgeToLength(piece, id, wish),
  ),
  placeDart: pieceEdit(
    (c) => ({
      ...placeOn(c),
      width: c.mm(5, 50),
      length: c.mm(40, 200),
      runs: c.pick(['square' as const, { towards: c.place() }]),
    }),
    (piece, wish, newId) => placeDart(piece, { id: newId(), ...wish }),
  ),
  moveDart: pieceEdit(
    (c) => ({ dartId: c.dartId, to: placeOn(c) }),
    (piece, { dartId, to }) => moveDart(piece, dartId, to),
  ),
  closeDart: pieceEdit(
    (c) => ({ dartId: c.dartId, opening: placeOn(c) }),
    (piece, { dartId, opening }) => closeDart(piece, dartId, opening),
  ),
  splitDart: pieceEdit(
    (c) => ({
      dartId: c.dartId,
      parts: [
        { share: 1, at: placeOn(c) },
        { share: 2, at: placeOn(c) },
      ],
    }),
    (piece, { dartId, parts }, newId) =>
      splitDart(
        piece,
        dartId,
        parts.map((part) => ({ id: newId(), ...part })),
      ),
  ),
  dartToGathers: pieceEdit(
    (c) => ({ dartId: c.dartId, from: c.mm(0, 60), to: c.mm(80, 200) }),
    (piece, { dartId, ...stretch }, newId) => dartToGathers(piece, dartId, { id: newId(), ...stretch }),
  ),
  dartToSeamEase: edit(
    (c) => ({ pieceId: c.piece.id, dartId: c.dartId }),
    (garment, { pieceId, dartId }) => dartToSeamEase(garment, pieceId, dartId),
  ),
  dartToGore: edit(
    (c) => ({ pieceId: c.piece.id, dartId: c.dartId, to: placeOn(c), through: [c.place()] }),
    (garment, { pieceId, dartId, ...wish }, newId) => {
      const piece = pieceOf(garment, pieceId);
      const gore = piece && dartToGore(piece, dartId, { ...wish, names: ['front', 'side'], seamName: 'gore', newId });
      if (gore?.kind !== 'gore-seam') return garment;
      return { ...garment, pieces: garment.pieces.flatMap((one) => (one === piece ? gore.pieces : [one])) };
    },
  ),
  gatherEdge: pieceEdit(
    (c) => ({ edgeId: c.edge.id, from: c.mm(0, 40), to: c.mm(60, 200), into: c.mm(20, 90) }),
    (piece, wish, newId) => gatherEdge(piece, { id: newId(), ...wish }),
  ),
  addGathers: pieceEdit(
    (c) => ({
      open: c.edge.id,
      far: c.otherEdge.id,
      hinge: c.pick(['far', 'none'] as const),
      places: c.pick([1, 3, 7]),
      more: c.mm(10, 200),
    }),
    (piece, wish, newId) => addGathers(piece, { id: newId(), ...wish }),
  ),
  pleatEdge: pieceEdit(
    (c) => ({
      edgeId: c.edge.id,
      pleats: c.pick([1, 2, 5]),
      by: { kind: 'depth' as const, depth: c.mm(5, 30) },
      laid: c.pick(['to-start', 'box'] as const),
    }),
    (piece, wish, newId) => pleatEdge(piece, { ...wish, newId }),
  ),
  addPleats: pieceEdit(
    (c) => ({
      open: c.edge.id,
      far: c.otherEdge.id,
      hinge: c.pick(['far', 'none'] as const),
      pleats: c.pick([1, 2, 5]),
      depth: c.mm(5, 30),
      laid: c.pick(['to-end', 'inverted'] as const),
    }),
    (piece, wish, newId) => addPleats(piece, { ...wish, newId }),
  ),
  slash: pieceEdit(
    (c) => ({
      open: c.edge.id,
      far: c.otherEdge.id,
      hinge: c.pick(['far', 'none'] as const),
      places: c.pick([1, 2, 6]),
      by: { kind: 'length' as const, total: c.mm(-60, 200) },
    }),
    (piece, wish) => slash(piece, wish),
  ),
  spread: pieceEdit(
    (c) => ({
      hinge: placeOn(c),
      open: { edgeId: c.otherEdge.id, along: c.mm(0, 300) },
      by: { kind: 'angle' as const, angle: c.mm(-0.3, 0.5) },
    }),
    (piece, wish) => spread(piece, wish),
  ),
  takeIn: pieceEdit(
    (c) => ({
      id: c.edge.id,
      pins: [
        { along: c.mm(0, 200), by: c.mm(-15, 25) },
        { along: c.mm(200, 400), by: c.mm(-15, 25) },
      ],
    }),
    (piece, { id, pins }) => takeIn(piece, id, pins),
  ),
  lengthenAcross: pieceEdit(
    (c) => ({ from: { x: -100, y: c.mm(50, 600) }, to: { x: 500, y: c.mm(50, 600) }, by: c.mm(-80, 120) }),
    (piece, { by, ...line }) => lengthenAcross(piece, line, by),
  ),
  lengthenAtHem: pieceEdit(
    (c) => ({ by: c.mm(-80, 120) }),
    (piece, { by }) => lengthenAtHem(piece, by),
  ),
  lengthenRing: edit(
    (c) => ({ ringId: ringId(c), depth: c.mm(0, 600), by: c.mm(-60, 90), atHem: c.mm(0, 1) }),
    (garment, { ringId: id, ...wish }) => {
      const ring = garment.rings.find((one) => one.id === id);
      return ring ? lengthenRing(garment, ring, wish) : garment;
    },
  ),
  drawWaist: pieceEdit(
    (c) => ({
      waistEdgeId: waistOf(c),
      way: c.pick([
        { kind: 'straight' as const },
        { kind: 'cone' as const, length: c.mm(100, 300), hipDepth: c.mm(150, 250), dip: c.mm(0, 20) },
        { kind: 'side-seam' as const, length: c.mm(100, 300) },
        { kind: 'typed' as const, rise: c.mm(0, 40), dip: c.mm(0, 20) },
      ]),
    }),
    (piece, { way, ...at }) => {
      const drawn = drawWaist(piece, at, way);
      return 'piece' in drawn ? drawn.piece : piece;
    },
  ),
  onTheFold: edit(
    (c) => ({ pieceId: c.piece.id }),
    (garment, { pieceId }, newId) => onTheFold(garment, pieceId, { newId }),
  ),
  leftAndRight: edit(
    (c) => ({ pieceId: c.piece.id }),
    (garment, { pieceId }, newId) => leftAndRight(garment, pieceId, { newId, names: { left: 'left', right: 'right' } }),
  ),
  levelHem: edit(
    (c) => ({ ringId: ringId(c), gaps: lengths(c), wanted: c.mm(0, 100) }),
    (garment, { ringId: id, gaps, wanted }) => {
      const ring = garment.rings.find((one) => one.id === id);
      const hem = ring && levelHem(garment, ring, gaps, wanted);
      return hem && 'garment' in hem ? hem.garment : garment;
    },
  ),
  waistFromLengths: edit(
    (c) => ({ ringId: ringId(c), lengths: lengths(c) }),
    (garment, { ringId: id, lengths: four }) => {
      const ring = garment.rings.find((one) => one.id === id);
      const waist = ring && waistFromLengths(garment, ring, four);
      return waist && 'garment' in waist ? waist.garment : garment;
    },
  ),
  trueSeam: edit(
    (c) => ({
      seamId: seamId(c),
      move: c.pick(['one', 'other', 'both'] as const),
      where: c.pick(['at-start', 'at-end', 'spread'] as const),
    }),
    (garment, { seamId: id, ...options }) => {
      const seam = garment.seams?.find((one) => one.id === id);
      return seam ? trueSeam(garment, seam, options) : garment;
    },
  ),
  takeInSeam: edit(
    (c) => ({ seamId: seamId(c), pins: [{ along: c.mm(0, 300), by: c.mm(-10, 20) }], shareOfOne: c.mm(0, 1) }),
    (garment, { seamId: id, ...wish }) => {
      const seam = garment.seams?.find((one) => one.id === id);
      return seam ? takeInSeam(garment, seam, wish) : garment;
    },
  ),
  band: edit(
    (c) => ({
      ringId: ringId(c),
      depth: c.mm(20, 120),
      lies: c.pick(['below', 'above'] as const),
      parts: c.pick([1, 2, 3]),
      lap: c.mm(0, 40),
    }),
    (garment, { ringId: id, ...options }, newId) => {
      const ring = garment.rings.find((one) => one.id === id);
      const joined = ring && joinedPanels(garment, ringPieces(garment, ring), { over: options.depth });
      if (joined?.kind !== 'joined-panels') return garment;
      const band = bandPieces(joined, { ...options, newId, name: 'Band' });
      return Array.isArray(band) ? withNewPieces(garment, band) : garment;
    },
  ),
};

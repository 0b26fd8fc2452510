import { addCloth, changeCloth, keepLay, removeCloth } from '../../core/garment/cloth-edits';
import { putKnownLength, removeDiagram, removeKnownLength, withDiagram } from '../../core/garment/diagram-edits';
import { leaveKnowingly } from '../../core/garment/knowingly-edits';
import { GIRTHS, LENGTHS, MEASURES } from '../../core/garment/measure';
import { addMockup, putPinned, removeMockup, settlePinned } from '../../core/garment/mockup-edits';
import { rectanglePiece } from '../../core/garment/new-piece';
import { removeOuter, setOuterLength, setShorterBy } from '../../core/garment/outer-edits';
import {
  forgetPrinter,
  setBaseLine,
  setPaper,
  setPrinter,
  setScaleProof,
  setSquares,
} from '../../core/garment/paper-edits';
import {
  addLevel,
  addRing,
  removeLevel,
  removeRing,
  setEase,
  setHangsFrom,
  setInRing,
  setLevelBody,
  setLevelPlace,
  setTimes,
} from '../../core/garment/ring-edits';
import { addSeam, changeSeam, removeSeam, withLap } from '../../core/garment/seam-edits';
import { PAPER_SIZES } from '../../core/garment/sheet-choice';
import { chooseSet, copySet, describeSet, setMeasure } from '../../core/garment/wearer-edits';
import { withNewPieces } from '../../core/garment/with-new-pieces';
import { carriedOver } from '../../core/mockup/carried-over';
import { type Chosen, type EditKind, edit } from './edit-kind';

const DAY = '2026-03-04';
const ringId = ({ ring }: Chosen) => ring?.id ?? 'no-ring';
const levelId = ({ ring, pick }: Chosen) => (ring?.levels.length ? pick(ring.levels).id : 'no-level');
const idIn = ({ pick }: Chosen, things: readonly { readonly id: string }[] = []) =>
  things.length > 0 ? pick(things).id : 'none';
const edgeRef = ({ piece, edge }: Chosen) => ({ pieceId: piece.id, edgeId: edge.id });
const level = (c: Chosen) => ({
  girth: c.pick(GIRTHS),
  depth: c.pick([
    { kind: 'length' as const, length: c.mm(0, 600) },
    { kind: 'measure' as const, measure: c.pick(LENGTHS) },
  ]),
});
const pinned = (c: Chosen) => ({
  what: c.pick([
    { kind: 'edge' as const, edge: edgeRef(c), pins: [{ along: c.mm(0, 300), by: c.mm(-20, 20) }], share: c.mm(0, 1) },
    {
      kind: 'length' as const,
      pieceIds: [c.piece.id],
      at: { kind: 'depth' as const, depth: c.mm(0, 500) },
      by: c.mm(-40, 60),
    },
    {
      kind: 'point' as const,
      pieceId: c.piece.id,
      cornerId: c.corner.id,
      by: { dx: c.mm(-20, 20), dy: c.mm(-20, 20) },
    },
  ]),
  side: c.pick(['both', 'left', 'right'] as const),
});

/** Everything but the shape of pieces: measures, rings, seams, mock-ups, cloth, paper. */
export const editsOfGarment: Readonly<Record<string, EditKind>> = {
  setMeasure: edit(
    (c) => ({ name: c.pick(MEASURES), length: c.mm(100, 1200) }),
    (garment, { name, length }) => setMeasure(garment, name, { length }),
  ),
  describeSet: edit(
    () => ({ date: DAY, wornOver: 'shift' }),
    (garment, words) => describeSet(garment, words),
  ),
  copySet: edit(
    () => ({ date: DAY }),
    (garment, { date }, newId) => copySet(garment, { newId, date }),
  ),
  chooseSet: edit(
    (c) => ({ id: c.pick(c.garment.wearer.sets).id }),
    (garment, { id }) => chooseSet(garment, id),
  ),
  newPiece: edit(
    (c) => ({ at: c.place(), across: c.mm(20, 600), down: c.mm(20, 900) }),
    (garment, { at, ...size }, newId) => {
      const piece = rectanglePiece(at, size, { newId, name: 'Strip' });
      return piece ? withNewPieces(garment, [piece]) : garment;
    },
  ),
  addRing: edit(
    (c) => ({ members: [{ pieceId: c.piece.id }], levels: [{ id: 'new-level', ...level(c), ease: c.mm(0, 60) }] }),
    (garment, ring, newId) => addRing(garment, { id: newId(), name: 'Ring', ...ring }),
  ),
  removeRing: edit(
    (c) => ({ id: ringId(c) }),
    (garment, { id }) => removeRing(garment, id),
  ),
  setInRing: edit(
    (c) => ({ id: ringId(c), pieceId: c.piece.id, member: c.pick(['in', 'out'] as const) }),
    (garment, { id, pieceId, member }) => setInRing(garment, id, pieceId, member),
  ),
  setTimes: edit(
    (c) => ({ id: ringId(c), pieceId: c.piece.id, times: c.pick([0, 1, 2, 6]) }),
    (garment, { id, pieceId, times }) => setTimes(garment, id, pieceId, times),
  ),
  setHangsFrom: edit(
    (c) => ({ id: ringId(c), pieceId: c.piece.id, edgeId: c.edge.id, depth: c.mm(-50, 300) }),
    (garment, { id, pieceId, ...from }) => setHangsFrom(garment, id, pieceId, from),
  ),
  addLevel: edit(
    (c) => ({ id: ringId(c), level: { ...level(c), ease: c.mm(0, 80) } }),
    (garment, { id, level: one }, newId) => addLevel(garment, id, { id: newId(), ...one }),
  ),
  removeLevel: edit(
    (c) => ({ id: ringId(c), levelId: levelId(c) }),
    (garment, { id, levelId: one }) => removeLevel(garment, id, one),
  ),
  setEase: edit(
    (c) => ({ id: ringId(c), levelId: levelId(c), ease: c.mm(-20, 90) }),
    (garment, { id, levelId: one, ease }) => setEase(garment, id, one, ease),
  ),
  setLevelPlace: edit(
    (c) => ({ id: ringId(c), levelId: levelId(c), place: level(c) }),
    (garment, { id, levelId: one, place }) => setLevelPlace(garment, id, one, place),
  ),
  setLevelBody: edit(
    (c) => ({ id: ringId(c), levelId: levelId(c), body: c.mm(500, 1100) }),
    (garment, { id, levelId: one, body }) => setLevelBody(garment, id, one, body),
  ),
  setOuterLength: edit(
    (c) => ({ at: c.pick(['front', 'side', 'back'] as const), length: c.mm(600, 1100) }),
    (garment, { at, length }) => setOuterLength(garment, at, length),
  ),
  setShorterBy: edit(
    (c) => ({ by: c.mm(0, 60) }),
    (garment, { by }) => setShorterBy(garment, by),
  ),
  removeOuter: edit(
    () => ({}),
    (garment) => removeOuter(garment),
  ),
  addSeam: edit(
    (c) => ({
      one: [edgeRef(c)],
      other: [{ pieceId: c.piece.id, edgeId: c.otherEdge.id }],
      ease: c.mm(-10, 20),
      way: c.pick(['opposite', 'same'] as const),
    }),
    (garment, seam, newId) => addSeam(garment, { id: newId(), name: '', ...seam }),
  ),
  lapSeam: edit(
    (c) => ({
      id: idIn(c, c.garment.seams),
      side: c.pick(['one', 'other'] as const),
      length: c.mm(0, 60),
      at: c.pick(['start', 'end'] as const),
    }),
    (garment, { id, ...lap }) => changeSeam(garment, id, (seam) => withLap(seam, lap, lap.side)),
  ),
  removeSeam: edit(
    (c) => ({ id: idIn(c, c.garment.seams) }),
    (garment, { id }) => removeSeam(garment, id),
  ),
  addMockup: edit(
    (c) => ({ version: 1, pinned: { ...pinned(c) } }),
    (garment, { version, pinned: one }, newId) =>
      addMockup(garment, {
        id: newId(),
        name: 'Mock-up',
        made: DAY,
        version,
        mark: '',
        note: '',
        pinned: [{ id: newId(), note: '', state: { kind: 'noted' }, ...one }],
      }),
  ),
  putPinned: edit(
    (c) => ({ id: idIn(c, c.garment.mockups), ...pinned(c) }),
    (garment, { id, ...one }, newId) =>
      putPinned(garment, id, { id: newId(), note: '', state: { kind: 'noted' }, ...one }),
  ),
  settlePinned: edit(
    (c) => ({ id: idIn(c, c.garment.mockups) }),
    (garment, { id }) =>
      settlePinned(garment, id, pinnedIn(garment, id), { kind: 'declined', date: DAY, reason: 'sat down' }),
  ),
  carryOver: edit(
    (c) => ({ id: idIn(c, c.garment.mockups) }),
    (garment, { id }) => {
      const carried = carriedOver(garment, {
        mockupId: id,
        pinnedIds: pinnedIn(garment, id),
        date: DAY,
        base: undefined,
      });
      return 'garment' in carried ? carried.garment : garment;
    },
  ),
  removeMockup: edit(
    (c) => ({ id: idIn(c, c.garment.mockups) }),
    (garment, { id }) => removeMockup(garment, id),
  ),
  addCloth: edit(
    (c) => ({
      width: c.mm(600, 1600),
      selvedge: c.mm(0, 20),
      atHand: c.mm(500, 5000),
      folded: c.pick(['open', 'lengthwise', 'crosswise'] as const),
      grain: c.pick(['straight', 'cross', 'bias'] as const),
    }),
    (garment, cloth, newId) =>
      addCloth(garment, { id: newId(), name: 'Wool', nap: 'none', flaws: [], strips: [], ...cloth }),
  ),
  changeCloth: edit(
    (c) => ({
      id: idIn(c, c.garment.cloths),
      width: c.mm(600, 1600),
      tilt: c.mm(0, 0.1),
      repeat: { along: c.mm(0, 300), across: c.mm(0, 300) },
    }),
    (garment, { id, ...change }) => changeCloth(garment, id, (cloth) => ({ ...cloth, ...change })),
  ),
  keepLay: edit(
    (c) => ({
      clothId: idIn(c, c.garment.cloths),
      length: c.mm(500, 4000),
      placed: [{ id: c.piece.id, copy: 0, stance: 0, at: c.place() }],
    }),
    (garment, lay) => keepLay(garment, { made: DAY, clothMark: 'mark', marks: [], ...lay }),
  ),
  removeCloth: edit(
    (c) => ({ id: idIn(c, c.garment.cloths) }),
    (garment, { id }) => removeCloth(garment, id),
  ),
  putKnownLength: edit(
    (c) => ({ id: idIn(c, c.garment.diagrams), from: c.place(), to: c.place(), length: c.mm(20, 900) }),
    (garment, { id, from, to, length }, newId) =>
      withDiagram(garment, id, (diagram) =>
        putKnownLength(diagram, { id: newId(), from, to, says: { kind: 'length', length } }),
      ),
  ),
  removeKnownLength: edit(
    (c) => ({
      id: idIn(c, c.garment.diagrams),
      known: idIn(
        c,
        c.garment.diagrams.flatMap(({ knownLengths }) => knownLengths),
      ),
    }),
    (garment, { id, known }) => withDiagram(garment, id, (diagram) => removeKnownLength(diagram, known)),
  ),
  removeDiagram: edit(
    (c) => ({ id: idIn(c, c.garment.diagrams) }),
    (garment, { id }) => removeDiagram(garment, id),
  ),
  setPaper: edit(
    (c) => ({
      size: c.pick(PAPER_SIZES),
      turned: c.pick(['upright', 'sideways'] as const),
      margin: c.mm(0, 30),
      overlap: c.mm(0, 30),
    }),
    (garment, choice) => setPaper(garment, choice),
  ),
  setPrinter: edit(
    (c) => ({ across: c.mm(0.95, 1.05), down: c.mm(0.95, 1.05) }),
    (garment, printer) => setPrinter(garment, printer),
  ),
  setScaleProof: edit(
    (c) => ({ date: DAY, across: c.mm(95, 105), down: c.mm(95, 105) }),
    (garment, proof) => setScaleProof(garment, proof),
  ),
  setSquares: edit(
    (c) => ({ square: c.pick([25.4, 50.8, 20]), from: c.pick(['zero', 'base-line'] as const) }),
    (garment, choice) => setSquares(garment, choice),
  ),
  setBaseLine: edit(
    (c) => edgeRef(c),
    (garment, { pieceId, edgeId }) => setBaseLine(garment, pieceId, edgeId),
  ),
  forgetPrinter: edit(
    () => ({}),
    (garment) => forgetPrinter(garment),
  ),
  leaveKnowingly: edit(
    (c) => ({ finding: `straight-waist ${c.piece.id}`, date: DAY, why: 'as printed' }),
    (garment, left) => leaveKnowingly(garment, left),
  ),
};

function pinnedIn(garment: Parameters<typeof removeMockup>[0], mockupId: string): string[] {
  return (garment.mockups ?? []).flatMap(({ id, pinned: all }) => (id === mockupId ? all.map((one) => one.id) : []));
}

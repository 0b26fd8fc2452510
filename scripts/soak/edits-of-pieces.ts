import { insertCorner, removeCorner, setCornerFinish } from '../../core/garment/corner-edits';
import { addThrough, curveEdge, removeThrough, setEndRule, straighten } from '../../core/garment/curve-edits';
import { nameEdge, setAllowance, setRole, setStated } from '../../core/garment/edge-edits';
import { putDart, putFullness, putLabel, putNotch, removeMark, setGrain } from '../../core/garment/mark-edits';
import { withAllowanceWhereNone } from '../../core/garment/missing-allowances';
import { mirrorPiece, movePiece, turnPiece } from '../../core/garment/move-piece';
import { moveCorner, moveThrough } from '../../core/garment/move-point';
import { CORNER_FINISHES, EDGE_ROLES } from '../../core/garment/piece';
import { splitEdge } from '../../core/garment/split-edge';
import { type Chosen, type EditKind, pieceEdit } from './edit-kind';

/** How many places a curved edge passes through, and any one of them. */
function throughOf({ edge, pick }: Chosen): number {
  return edge.shape.kind === 'curve' ? pick([...edge.shape.through.keys(), 0]) : 0;
}

/** Drawing and marking: the Draft and Seams rooms. */
export const editsOfPieces: Readonly<Record<string, EditKind>> = {
  moveCorner: pieceEdit(
    (c) => ({ id: c.corner.id, to: { x: c.corner.at.x + c.mm(-60, 60), y: c.corner.at.y + c.mm(-60, 60) } }),
    (piece, { id, to }) => moveCorner(piece, id, to),
  ),
  moveThrough: pieceEdit(
    (c) => ({ id: c.edge.id, index: throughOf(c), to: c.place() }),
    (piece, { id, index, to }) => moveThrough(piece, id, index, to),
  ),
  addThrough: pieceEdit(
    (c) => ({ id: c.edge.id, at: c.place() }),
    (piece, { id, at }) => addThrough(piece, id, at)?.piece ?? piece,
  ),
  removeThrough: pieceEdit(
    (c) => ({ id: c.edge.id, index: throughOf(c) }),
    (piece, { id, index }) => removeThrough(piece, id, index),
  ),
  insertCorner: pieceEdit(
    (c) => ({ id: c.edge.id, along: c.mm(-10, 600) }),
    (piece, { id, along }, newId) => insertCorner(piece, id, along, newId),
  ),
  removeCorner: pieceEdit(
    (c) => ({ id: c.corner.id }),
    (piece, { id }) => removeCorner(piece, id),
  ),
  splitEdge: pieceEdit(
    (c) => ({ id: c.edge.id, along: c.mm(1, 400) }),
    (piece, { id, along }, newId) => splitEdge(piece, id, along, { cornerId: newId(), edgeId: newId() }),
  ),
  straighten: pieceEdit(
    (c) => ({ id: c.edge.id }),
    (piece, { id }) => straighten(piece, id),
  ),
  curveEdge: pieceEdit(
    (c) => ({ id: c.edge.id }),
    (piece, { id }) => curveEdge(piece, id),
  ),
  setEndRule: pieceEdit(
    (c) => ({
      id: c.edge.id,
      end: c.pick(['leaves', 'meets'] as const),
      rule: c.pick(['free', 'square', 'in-line'] as const),
    }),
    (piece, { id, end, rule }) => setEndRule(piece, id, end, rule),
  ),
  setCornerFinish: pieceEdit(
    (c) => ({ id: c.corner.id, finish: c.pick(CORNER_FINISHES) }),
    (piece, { id, finish }) => setCornerFinish(piece, id, finish),
  ),
  setRole: pieceEdit(
    (c) => ({ id: c.edge.id, role: c.pick(EDGE_ROLES) }),
    (piece, { id, role }) => setRole(piece, id, role),
  ),
  setAllowance: pieceEdit(
    (c) => ({ id: c.edge.id, allowance: c.mm(0, 60) }),
    (piece, { id, allowance }) => setAllowance(piece, id, allowance),
  ),
  withAllowanceWhereNone: pieceEdit(
    (c) => ({ allowance: c.mm(0, 40) }),
    (piece, { allowance }) => withAllowanceWhereNone(piece, allowance),
  ),
  setStated: pieceEdit(
    (c) => ({ id: c.edge.id, length: c.mm(20, 900), rules: c.pick(['unsettled', 'drawing', 'figure'] as const) }),
    (piece, { id, ...stated }) => setStated(piece, id, stated),
  ),
  nameEdge: pieceEdit(
    (c) => ({ id: c.edge.id, name: 'side' }),
    (piece, { id, name }) => nameEdge(piece, id, name),
  ),
  putDart: pieceEdit(
    (c) => ({ edgeId: c.edge.id, along: c.mm(10, 300), width: c.mm(5, 60), point: c.place() }),
    (piece, dart, newId) => putDart(piece, { id: newId(), ...dart }),
  ),
  putNotch: pieceEdit(
    (c) => ({ edgeId: c.edge.id, along: c.mm(0, 500), count: c.pick([1, 2, 3] as const) }),
    (piece, notch, newId) => putNotch(piece, { id: newId(), ...notch }),
  ),
  putLabel: pieceEdit(
    (c) => ({ at: c.place(), text: 'pocket here' }),
    (piece, label, newId) => putLabel(piece, { id: newId(), ...label }),
  ),
  putGathers: pieceEdit(
    (c) => ({ edgeId: c.edge.id, from: c.mm(0, 50), to: c.mm(60, 200), into: c.mm(20, 60) }),
    (piece, gathers, newId) => putFullness(piece, { id: newId(), kind: 'gathers', ...gathers }),
  ),
  putPleat: pieceEdit(
    (c) => ({
      edgeId: c.edge.id,
      from: c.mm(0, 150),
      takes: c.mm(10, 60),
      laid: c.pick(['to-start', 'to-end', 'inverted', 'box'] as const),
    }),
    (piece, pleat, newId) => putFullness(piece, { id: newId(), kind: 'pleat', ...pleat }),
  ),
  removeMark: pieceEdit(
    (c) => ({ id: c.pick([c.dartId, ...c.piece.notches.map(({ id }) => id), ...c.piece.labels.map(({ id }) => id)]) }),
    (piece, { id }) => removeMark(piece, id),
  ),
  setGrain: pieceEdit(
    (c) => ({ from: c.place(), to: c.place() }),
    (piece, grain) => setGrain(piece, grain),
  ),
  movePiece: pieceEdit(
    (c) => ({ dx: c.mm(-500, 500), dy: c.mm(-500, 500) }),
    (piece, by) => movePiece(piece, by),
  ),
  turnPiece: pieceEdit(
    (c) => ({ centre: c.place(), angle: c.mm(-3, 3) }),
    (piece, { centre, angle }) => turnPiece(piece, centre, angle),
  ),
  mirrorPiece: pieceEdit(
    (c) => ({ from: c.place(), to: c.place() }),
    (piece, { from, to }) => mirrorPiece(piece, from, to),
  ),
};

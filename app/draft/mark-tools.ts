import { putDart, putLabel, putNotch, setGrain } from '../../core/garment/mark-edits';
import type { Piece } from '../../core/garment/piece';
import { withPiece } from '../../core/garment/with-piece';
import { distance, type TablePoint } from '../../core/geometry/point';
import { inches } from '../../core/units/inch';
import { useGarment } from '../state/garment-store';
import { newId } from '../state/new-id';
import { type Chosen, useTable } from '../state/table-store';
import { hitEdge } from '../table/hit-edge';
import { insidePiece } from '../table/name-place';
import type { Drag, PointerAt, Tool } from '../table/tool';
import { say } from '../ui/say';
import { draftWords as words } from '../words/draft';
import { pieceInHand } from './adjust-tool';
import { type MarkKind, setPointer, useDraft } from './draft-store';
import type { Hit } from './hit-test';
import { snapped } from './snap';
import { snapHere } from './snap-here';

/** A dart as it is first put: half an inch wide and, when only pressed, four inches deep. */
const FIRST_WIDTH = inches(0.5);
const FIRST_DEPTH = inches(4);
/** A grain line shorter than this was a press, not a line. */
const LEAST_GRAIN = inches(0.5);

type EdgeHit = Extract<Hit, { kind: 'edge' }>;

/** Puts one kind of mark: on an edge, or at a place of the piece under the pointer. */
export function markTool(kind: MarkKind): Tool {
  return {
    cursor: 'crosshair',
    press(at) {
      if (kind === 'grain') return grainDrag(at);
      if (kind === 'label') return labelDrag(at);
      const found = edgeUnder(at);
      if (!found) return undefined;
      return kind === 'notch' ? notchDrag(found.piece, found.hit) : dartDrag(found.piece, found.hit);
    },
    hover(at) {
      const found = at && (kind === 'notch' || kind === 'dart') ? edgeUnder(at) : undefined;
      if (found) setPointer({ at: found.hit.at, to: 'point' });
      else setPointer(at && { at: at.world, to: 'nothing' });
    },
    tap() {
      say(kind === 'notch' || kind === 'dart' ? words.said.edgeFirst : words.said.pieceFirst);
    },
  };
}

function notchDrag(piece: Piece, pressed: EdgeHit): Drag {
  let { along } = pressed;
  return {
    move(at) {
      const hit = hitEdge(piece, at.world, at.reach * 4);
      if (hit?.edgeId !== pressed.edgeId) return;
      along = hit.along;
      setPointer({ at: hit.at, to: 'point' });
    },
    end() {
      const id = newId();
      put(words.steps.notch, piece, { kind: 'notch', pieceId: piece.id, id }, (now) =>
        putNotch(now, { id, edgeId: pressed.edgeId, along, count: 1 }),
      );
    },
    cancel: letGo,
  };
}

function dartDrag(piece: Piece, pressed: EdgeHit): Drag {
  const id = newId();
  let point: TablePoint | undefined;
  return {
    move(at) {
      point = snapped(at.world, snapHere(at, [], [pressed.at])).at;
      useDraft.setState({ stroke: { from: pressed.at, to: point } });
    },
    end() {
      const to = point && distance(point, pressed.at) > FIRST_WIDTH ? point : inward(piece, pressed);
      put(words.steps.dart, piece, { kind: 'dart', pieceId: piece.id, id }, (now) =>
        putDart(now, { id, edgeId: pressed.edgeId, along: pressed.along, width: FIRST_WIDTH, point: to }),
      );
    },
    cancel: letGo,
  };
}

/** A place square to the edge and inside the piece, as deep as a dart first is. */
function inward(piece: Piece, { at, edgeId }: EdgeHit): TablePoint {
  const index = piece.edges.findIndex((edge) => edge.id === edgeId);
  const from = piece.corners[index]?.at ?? at;
  const to = piece.corners[(index + 1) % piece.corners.length]?.at ?? at;
  const length = distance(from, to) || 1;
  const square = { x: -(to.y - from.y) / length, y: (to.x - from.x) / length };
  const probe = { x: at.x + square.x, y: at.y + square.y };
  const way = insidePiece(piece, probe) ? 1 : -1;
  return { x: at.x + square.x * FIRST_DEPTH * way, y: at.y + square.y * FIRST_DEPTH * way };
}

function grainDrag(pressed: PointerAt): Drag | undefined {
  const piece = pieceUnder(pressed);
  if (!piece) return undefined;
  const from = snapped(pressed.world, snapHere(pressed, [], [])).at;
  let to = from;
  return {
    move(at) {
      to = snapped(at.world, snapHere(at, [], [from])).at;
      useDraft.setState({ stroke: { from, to } });
    },
    end() {
      if (distance(from, to) < LEAST_GRAIN) {
        // Only pressed: an upright line of a hand's length, to be adjusted.
        to = { x: from.x, y: from.y + FIRST_DEPTH };
      }
      put(words.steps.grain, piece, { kind: 'grain', pieceId: piece.id }, (now) => setGrain(now, { from, to }));
    },
    cancel: letGo,
  };
}

function labelDrag(pressed: PointerAt): Drag | undefined {
  const piece = pieceUnder(pressed);
  if (!piece) return undefined;
  const id = newId();
  let to = snapped(pressed.world, snapHere(pressed, [], [])).at;
  return {
    move(at) {
      const place = snapped(at.world, snapHere(at, [], []));
      to = place.at;
      setPointer(place);
    },
    end() {
      put(words.steps.label, piece, { kind: 'label', pieceId: piece.id, id }, (now) =>
        putLabel(now, { id, at: to, text: words.newLabel }),
      );
    },
    cancel: letGo,
  };
}

function put(label: string, piece: Piece, chosen: Chosen, change: (piece: Piece) => Piece): void {
  letGo();
  useGarment.getState().edit(label, (garment) => withPiece(garment, piece.id, change));
  useTable.getState().choose(chosen);
  // The mark can be moved at once; the next one wants a fresh press of Mark.
  useDraft.setState({ mode: 'adjust' });
}

function letGo(): void {
  useDraft.setState({ stroke: undefined, pointer: undefined });
}

/** The edge under the pointer, of the piece in hand before any other. */
function edgeUnder(at: PointerAt): { readonly piece: Piece; readonly hit: EdgeHit } | undefined {
  const inHand = pieceInHand();
  const pieces = useGarment.getState().garment?.pieces ?? [];
  for (const piece of inHand ? [inHand, ...pieces] : pieces) {
    const hit = hitEdge(piece, at.world, at.reach * 1.5);
    if (hit) return { piece, hit };
  }
  return undefined;
}

function pieceUnder(at: PointerAt): Piece | undefined {
  const inHand = pieceInHand();
  if (inHand && insidePiece(inHand, at.world)) return inHand;
  return useGarment.getState().garment?.pieces.findLast((piece) => insidePiece(piece, at.world));
}

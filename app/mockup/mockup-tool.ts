import { cutPieces } from '../../core/garment/cut-pieces';
import type { Garment } from '../../core/garment/garment';
import type { PinnedChange } from '../../core/garment/mockup';
import { outlineOf } from '../../core/garment/outline';
import { isSameEdge } from '../../core/garment/seam';
import { edgeIndex, pieceOf } from '../../core/garment/with-piece';
import { nearestOnPath, pathAtLength } from '../../core/geometry/path';
import { distance } from '../../core/geometry/point';
import { type EdgeHit, hitEdge } from '../table/hit-edge';
import type { PointerAt, Tool } from '../table/tool';
import { note, useMockup } from './mockup-store';
import { newChange, pinnableEdge, STEPS, stepped, withPin } from './new-change';

/** Presses choose an edge, set pins along it or choose a corner; a drag moves a pin along its edge. */
export function mockupTool(shown: () => Garment, canNote: () => boolean): Tool {
  let over = false;
  return {
    get cursor() {
      return over ? 'pointer' : 'default';
    },
    hover(at) {
      const { noting, carrying } = useMockup.getState();
      over = at !== undefined && !carrying && (canNote() || !!noting) && edgeAt(shown(), at) !== undefined;
    },
    press(at) {
      const begun = useMockup.getState().noting;
      const pin = begun && pinAt(shown(), begun, at);
      if (!begun || pin === undefined) return undefined;
      const beforePin = useMockup.getState().pin;
      note(begun, pin);
      return {
        move: ({ world }) => {
          const { noting, pin: now } = useMockup.getState();
          if (noting) movePin(shown(), noting, now, world);
        },
        end: () => undefined,
        cancel: () => note(begun, beforePin),
      };
    },
    tap(at) {
      const { noting, carrying } = useMockup.getState();
      if (carrying) return;
      const garment = shown();
      if (noting?.what.kind === 'point') {
        const corner = cornerAt(garment, at);
        if (corner) note({ ...noting, what: { ...noting.what, ...corner } });
        return;
      }
      const hit = edgeAt(garment, at);
      if (!hit) return;
      if (!noting) {
        if (canNote()) note(newChange(garment, 'edge', refOf(hit)), 0);
        return;
      }
      if (noting.what.kind !== 'edge') return;
      if (isSameEdge(noting.what.edge, hit)) setPin(garment, noting, hit.along);
      // What is pinned already is not lost to a press beside it.
      else if (noting.what.pins.length === 0) note({ ...noting, what: { ...noting.what, edge: refOf(hit) } }, 0);
    },
    key({ key }) {
      const { noting, carrying } = useMockup.getState();
      if (key !== 'Escape' || !(noting || carrying)) return false;
      useMockup.setState({ noting: undefined, carrying: undefined });
      return true;
    },
  };
}

function setPin(garment: Garment, noting: PinnedChange, along: number): void {
  const { what } = noting;
  const at = what.kind === 'edge' ? pinnableEdge(garment, what.edge) : undefined;
  if (what.kind !== 'edge' || !at) return;
  const step = STEPS[garment.shownIn];
  const by = what.pins[useMockup.getState().pin]?.by ?? step.by;
  const made = withPin(noting, stepped(along, step.along, at), by);
  note(made.change, made.pin);
}

function movePin(garment: Garment, noting: PinnedChange, pin: number, world: PointerAt['world']): void {
  const { what } = noting;
  const at = what.kind === 'edge' ? pinnableEdge(garment, what.edge) : undefined;
  const path = at && outlineOf(at.piece).edges[edgeIndex(at.piece, at.edge.id)];
  const held = what.kind === 'edge' ? what.pins[pin] : undefined;
  if (what.kind !== 'edge' || !at || !path || !held) return;
  const along = stepped(nearestOnPath(path, world).along, STEPS[garment.shownIn].along / 4, at);
  const moved = { ...held, along };
  const pins = what.pins.with(pin, moved).toSorted((a, b) => a.along - b.along);
  note({ ...noting, what: { ...what, pins } }, pins.indexOf(moved));
}

function pinAt(garment: Garment, { what }: PinnedChange, { world, reach }: PointerAt): number | undefined {
  if (what.kind !== 'edge') return undefined;
  const piece = pieceOf(garment, what.edge.pieceId);
  const path = piece && outlineOf(piece).edges[edgeIndex(piece, what.edge.edgeId)];
  if (!path) return undefined;
  const at = what.pins.findIndex(({ along }) => distance(pathAtLength(path, along).point, world) <= reach);
  return at < 0 ? undefined : at;
}

/** The nearest edge within reach that is no fold. */
function edgeAt(garment: Garment, { world, reach }: PointerAt): (EdgeHit & { readonly pieceId: string }) | undefined {
  return cutPieces(garment)
    .flatMap((piece) => {
      const hit = hitEdge(piece, world, reach);
      const role = piece.edges.find(({ id }) => id === hit?.edgeId)?.role;
      return hit && role !== 'fold' ? [{ ...hit, pieceId: piece.id }] : [];
    })
    .sort((a, b) => distance(a.at, world) - distance(b.at, world))[0];
}

function cornerAt(garment: Garment, { world, reach }: PointerAt) {
  return cutPieces(garment)
    .flatMap((piece) => piece.corners.map(({ id, at }) => ({ pieceId: piece.id, cornerId: id, at })))
    .filter(({ at }) => distance(at, world) <= reach * 1.5)
    .sort((a, b) => distance(a.at, world) - distance(b.at, world))
    .map(({ pieceId, cornerId }) => ({ pieceId, cornerId }))[0];
}

function refOf({ pieceId, edgeId }: { readonly pieceId: string; readonly edgeId: string }) {
  return { pieceId, edgeId };
}

import { girthsOf } from '../fit/round-body';
import type { Garment, Level } from '../garment/garment';
import { outlineOf } from '../garment/outline';
import type { Edge, Piece } from '../garment/piece';
import { pieceOf } from '../garment/with-piece';
import { pathLength } from '../geometry/path';

/** A length before and after a change; mm. */
interface BeforeAfter {
  readonly before: number;
  readonly after: number;
}

/** What a change does to the garment, in numbers. */
export interface WhatChanges {
  readonly changed: readonly Piece[];
  readonly added: readonly Piece[];
  readonly removed: readonly Piece[];
  /** Edges of changed pieces that become longer or shorter, along the stitch line. */
  readonly edges: readonly (BeforeAfter & { readonly piece: Piece; readonly edge: Edge })[];
  /** Girths all the way round that change, ring by ring and level by level. */
  readonly girths: readonly (BeforeAfter & { readonly ringId: string; readonly level: Level })[];
}

/** A length that changes by less than this (mm) is said to stay: it is less than can be drawn. */
const STAYS = 0.05;

/** Compares a garment with what it would become. Pieces are told apart by their ids. */
export function whatChanges(before: Garment, after: Garment): WhatChanges {
  const pairs = after.pieces.flatMap((piece) => {
    const was = pieceOf(before, piece.id);
    return was && was !== piece ? [{ was, piece }] : [];
  });
  return {
    changed: pairs.map(({ piece }) => piece),
    added: after.pieces.filter(({ id }) => !pieceOf(before, id)),
    removed: before.pieces.filter(({ id }) => !pieceOf(after, id)),
    edges: pairs.flatMap(({ was, piece }) => edgesChanged(was, piece)),
    girths: girthsChanged(before, after),
  };
}

function edgesChanged(was: Piece, piece: Piece): WhatChanges['edges'] {
  const [old, now] = [outlineOf(was).edges, outlineOf(piece).edges];
  return piece.edges.flatMap((edge, index) => {
    const wasPath = old[was.edges.findIndex(({ id }) => id === edge.id)];
    const path = now[index];
    if (!wasPath || !path) return [];
    const lengths = { before: pathLength(wasPath), after: pathLength(path) };
    return Math.abs(lengths.after - lengths.before) < STAYS ? [] : [{ piece, edge, ...lengths }];
  });
}

function girthsChanged(before: Garment, after: Garment): WhatChanges['girths'] {
  return after.rings.flatMap((ring) => {
    const wasRing = before.rings.find(({ id }) => id === ring.id);
    if (!wasRing) return [];
    const was = girthsOf(before, wasRing);
    return girthsOf(after, ring).flatMap((girth) => {
      const old = was.find(({ level }) => level.id === girth.level.id);
      if (girth.kind === 'no-depth' || !old || old.kind === 'no-depth') return [];
      if (Math.abs(girth.total - old.total) < STAYS) return [];
      return [{ ringId: ring.id, level: girth.level, before: old.total, after: girth.total }];
    });
  });
}

import type { TablePoint } from '../geometry/point';
import type { Fullness } from './fullness';

/** What an edge is for. It decides how it is drawn, checked and finished. */
export const EDGE_ROLES = ['seam', 'fold', 'waist', 'hem', 'opening', 'finished'] as const;
export type EdgeRole = (typeof EDGE_ROLES)[number];

/** How an edge stands at a corner: freely, square to the edge before or after it, or running on in line with it. */
export type EndRule = 'free' | 'square' | 'in-line';

/** The run of an edge between its two corners. */
export type EdgeShape =
  | { readonly kind: 'straight' }
  /** A smooth curve through points, in order from the start corner; never empty of meaning: no points is a bow. */
  | {
      readonly kind: 'curve';
      readonly through: readonly TablePoint[];
      readonly leaves: EndRule;
      readonly meets: EndRule;
    };

/** A figure printed on the source for an edge, and which of the two she trusts. */
export interface StatedOnEdge {
  readonly length: number;
  readonly rules: 'unsettled' | 'drawing' | 'figure';
}

/** One edge of a piece, from the corner of the same index to the next corner round. */
export interface Edge {
  readonly id: string;
  readonly name: string;
  readonly role: EdgeRole;
  readonly shape: EdgeShape;
  readonly stated?: StatedOnEdge;
  /** Width added outside the stitch line when cutting; `undefined` until she has said. A fold has none. */
  readonly allowance?: number;
}

/** How the cut line turns a corner. */
export const CORNER_FINISHES = ['mitred', 'blunt', 'rounded', 'squared', 'mirrored'] as const;
export type CornerFinish = (typeof CORNER_FINISHES)[number];

/** A corner of the stitch line. Without a `finish` of its own the program chooses by the edges that meet there. */
export interface Corner {
  readonly id: string;
  readonly at: TablePoint;
  readonly finish?: CornerFinish;
}

/** A dart: its mouth lies on an edge, centred `along` from the edge's start; it closes to `point`. */
export interface Dart {
  readonly id: string;
  readonly edgeId: string;
  readonly along: number;
  readonly width: number;
  readonly point: TablePoint;
}

/** A notch on an edge, `along` from its start: one, two or three cuts side by side. */
export interface Notch {
  readonly id: string;
  readonly edgeId: string;
  readonly along: number;
  readonly count: 1 | 2 | 3;
}

/** The straight of the cloth on the piece. */
export interface Grain {
  readonly from: TablePoint;
  readonly to: TablePoint;
}

/** Words or a drill mark at a place on the piece. */
export interface Label {
  readonly id: string;
  readonly at: TablePoint;
  readonly text: string;
}

/** How the piece is cut: once or more on a fold, in mirrored pairs, or as drawn. `count` is pieces of cloth in the end. */
export interface Cut {
  readonly how: 'fold' | 'pair' | 'single';
  readonly count: number;
}

/** Whether the traced outline is the stitch line, already has allowances in it, or nobody has said yet. */
export type DrawnAs = 'net' | 'included' | 'not-known';

/**
 * One pattern piece: a closed ring of corners and, from corner `i` to corner `i + 1`, edge `i`.
 * `corners` and `edges` have the same length, at least three (two when an edge is curved).
 */
export interface Piece {
  readonly id: string;
  readonly name: string;
  readonly cut: Cut;
  readonly drawnAs: DrawnAs;
  readonly corners: readonly Corner[];
  readonly edges: readonly Edge[];
  readonly darts: readonly Dart[];
  readonly notches: readonly Notch[];
  readonly labels: readonly Label[];
  readonly grain?: Grain;
  /** Gathers and pleats. */
  readonly fullness?: readonly Fullness[];
  /** Whose side it is for, where the two sides of a body are drafted apart. */
  readonly side?: 'left' | 'right';
  /** `guide`: a base pattern to lay a draft over and to measure against; it is neither cut nor printed nor counted. */
  readonly use?: 'guide';
  /** The diagram it was traced from, so that it can follow when the diagram's scale is mended. */
  readonly diagramId?: string;
  readonly remarks: string;
}

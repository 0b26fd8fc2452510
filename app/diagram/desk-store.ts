import { create } from 'zustand';
import type { RuledLine } from '../../core/garment/diagram';
import type { PhotoPoint } from '../../core/geometry/point';
import type { SidePlace } from './change-diagram';

/** A line drawn on the picture of which she has not yet said how long it is. */
export interface FreshLine {
  readonly diagramId: string;
  readonly from: PhotoPoint;
  readonly to: PhotoPoint;
  /** The intervals of a scale bar it is divided into, to be seen. */
  readonly intervals?: number;
}

/** Two ends of a line that should be straight; of one that is there already where its ends were moved. */
export interface RuledEnds extends Omit<FreshLine, 'intervals'> {
  readonly again?: RuledLine;
}

interface DeskState {
  /** The picture as the camera saw it, or laid flat. */
  readonly showing: 'photo' | 'squared';
  /** The corner that arrow keys move. */
  readonly corner: 0 | 1 | 2 | 3 | undefined;
  /** The place of a curved side that arrow keys move. */
  readonly sidePlace: SidePlace | undefined;
  /** A point is held by the pointer: nothing may cover what lies under it. */
  readonly held: boolean;
  /** A known length, or a line that should be straight, is being drawn: nothing yet, or its first end. */
  readonly drawing: { readonly what: 'length' | 'straight'; readonly from: PhotoPoint | undefined } | undefined;
  readonly fresh: FreshLine | undefined;
  /** The two ends of a line that should be straight, while the printed line between them is followed. */
  readonly ruling: RuledEnds | undefined;
  /** A place seen in two pictures is asked for: in the half to be laid, and when that is given in the other. */
  readonly matching:
    | { readonly diagramId: string; readonly otherId: string; readonly here: PhotoPoint | undefined }
    | undefined;
  /** Ends of known lengths go to printed ticks and ends of lines close by. */
  readonly toTicks: boolean;
}

/** What is in hand in the Diagram room; forgotten when she leaves the garment. */
export const useDesk = create<DeskState>(() => ({
  showing: 'photo',
  corner: undefined,
  sidePlace: undefined,
  held: false,
  drawing: undefined,
  fresh: undefined,
  ruling: undefined,
  matching: undefined,
  toTicks: false,
}));

export const cornerNumbers = [0, 1, 2, 3] as const;

import { create } from 'zustand';
import type { Diagram } from '../../core/garment/diagram';
import type { Place } from '../../core/garment/finding';
import type { CleanUp } from '../../core/picture/cleaned';
import { inches } from '../../core/units/inch';

/** The rooms of the job, and the shelf where garments are kept. */
export type Room =
  | 'shelf'
  | 'wearer'
  | 'diagram'
  | 'draft'
  | 'reshape'
  | 'seams'
  | 'fit'
  | 'mockup'
  | 'versions'
  | 'compare'
  | 'cloth'
  | 'paper'
  | 'check';

/** What is chosen on the table; the notebook speaks of it. */
export type Chosen =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'piece' | 'grain'; readonly pieceId: string }
  | { readonly kind: 'corner'; readonly pieceId: string; readonly cornerId: string }
  | { readonly kind: 'edge'; readonly pieceId: string; readonly edgeId: string }
  | { readonly kind: 'through'; readonly pieceId: string; readonly edgeId: string; readonly index: number }
  | { readonly kind: 'dart' | 'notch' | 'label'; readonly pieceId: string; readonly id: string }
  | { readonly kind: 'cloth'; readonly clothId: string }
  | { readonly kind: 'diagram'; readonly diagramId: string }
  | { readonly kind: 'known-length'; readonly diagramId: string; readonly knownLengthId: string };

/** How a flat world is seen: CSS pixels to one of its units, and where its zero lies in the box. */
export interface View {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

export interface TableState {
  readonly room: Room;
  readonly chosen: Chosen;
  /** The picture's own pixels, and the table at full size, each keep their view. */
  readonly view: Readonly<Record<'photo' | 'table', View | undefined>>;
  readonly snapping: boolean;
  /** mm */
  readonly snapStep: number;
  readonly photoShown: boolean;
  /** 0 to 1 */
  readonly photoStrength: number;
  /** How the picture of a diagram is cleaned up for the eye; as it is where none is said. */
  readonly cleanUp: Readonly<Record<string, CleanUp | undefined>>;
  /** The picture that is worked on where only one is in hand; the first of the garment unless chosen. */
  readonly diagramInHand: string | undefined;
  /** Whether the pieces as they were first drawn lie under the draft. */
  readonly tracedShown: boolean;
  /** Something half done, such as a piece being traced, that undo takes back before it touches the garment. */
  readonly undoFirst: { readonly label: string; readonly undo: () => void } | undefined;
  goTo(room: Room, chosen?: Chosen): void;
  choose(chosen: Chosen): void;
  setView(which: 'photo' | 'table', view: View | undefined): void;
  setSnapping(snapping: boolean): void;
  setSnapStep(snapStep: number): void;
  setPhotoShown(photoShown: boolean): void;
  setPhotoStrength(photoStrength: number): void;
  setCleanUp(diagramId: string, cleanUp: CleanUp | undefined): void;
  setTracedShown(tracedShown: boolean): void;
}

const nothing: Chosen = { kind: 'nothing' };

/** What she is looking at. It is never undone and never saved with the garment. */
export const useTable = create<TableState>((set) => ({
  room: 'shelf',
  chosen: nothing,
  view: { photo: undefined, table: undefined },
  snapping: true,
  snapStep: inches(1 / 8),
  photoShown: true,
  photoStrength: 0.8,
  cleanUp: {},
  tracedShown: false,
  diagramInHand: undefined,
  undoFirst: undefined,
  goTo: (room, chosen) => set((table) => ({ room, ...taken(chosen ?? table.chosen) })),
  choose: (chosen) => set(taken(chosen)),
  setView: (which, view) => set((table) => ({ view: { ...table.view, [which]: view } })),
  setSnapping: (snapping) => set({ snapping }),
  setSnapStep: (snapStep) => set({ snapStep }),
  setPhotoShown: (photoShown) => set({ photoShown }),
  setPhotoStrength: (photoStrength) => set({ photoStrength }),
  setCleanUp: (diagramId, cleanUp) => set((table) => ({ cleanUp: { ...table.cleanUp, [diagramId]: cleanUp } })),
  setTracedShown: (tracedShown) => set({ tracedShown }),
}));

/** A chosen picture, or a line on it, takes that picture in hand; it stays there when something else is chosen. */
function taken(chosen: Chosen) {
  return 'diagramId' in chosen ? { chosen, diagramInHand: chosen.diagramId } : { chosen };
}

/** The picture in hand, or the first where none has been taken. */
export function diagramInHand(diagrams: readonly Diagram[], id: string | undefined): Diagram | undefined {
  return diagrams.find((diagram) => diagram.id === id) ?? diagrams[0];
}

/** What to choose so that the place of a finding is in front of her. */
export function chosenAt(place: Place): Chosen {
  switch (place.kind) {
    case 'diagram':
      return place.knownLengthId === undefined
        ? { kind: 'diagram', diagramId: place.diagramId }
        : { kind: 'known-length', diagramId: place.diagramId, knownLengthId: place.knownLengthId };
    case 'piece':
      return { kind: 'piece', pieceId: place.pieceId };
    case 'edge':
      return { kind: 'edge', pieceId: place.pieceId, edgeId: place.edgeId };
    case 'garment':
    case 'measure':
    case 'ring':
    case 'mockup':
    case 'paper':
      return nothing;
    case 'cloth':
      return { kind: 'cloth', clothId: place.clothId };
  }
}

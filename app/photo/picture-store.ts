import { create } from 'zustand';
import { useGarment } from '../state/garment-store';
import type { OpenedPicture, PictureRefusal } from '../workers/photo-calls';

/** Why the picture of a diagram cannot be shown. */
export type PictureTrouble =
  | PictureRefusal
  /** The diagram is here, its picture is not: another device, or storage that was cleared. */
  | { readonly kind: 'missing' }
  /** The worker gave up, most likely for want of memory. */
  | { readonly kind: 'no-memory' };

/** A picture ready to be looked at, and its file. */
export interface ReadyPicture extends OpenedPicture {
  readonly file: Blob;
  /** What the worker knows the file by: another each time a file is opened. */
  readonly key: string;
}

/** The picture laid flat. While a corner moves it is a quick look, coarse but at once. */
export interface FlatPictureShown {
  readonly levels: readonly ImageBitmap[];
  /** What its pixels were made from. */
  readonly key: string;
  readonly quality: 'quick' | 'full';
}

/** What there is to see of one diagram. */
export interface Pictures {
  readonly photo?: ReadyPicture;
  readonly trouble?: PictureTrouble;
  readonly flat?: FlatPictureShown;
  /** The share done of the full flat picture, while it is being made. */
  readonly flattening?: number;
  /** She stopped it. */
  readonly stopped?: true;
}

const none: Pictures = {};

/** The pictures in memory, by diagram. A diagram that is not in it has not been asked for yet. */
export const usePictures = create<{ readonly byDiagram: Readonly<Record<string, Pictures>> }>(() => ({
  byDiagram: {},
}));

/** What there is of a diagram's pictures now. */
export function picturesOf(diagramId: string): Pictures {
  return usePictures.getState().byDiagram[diagramId] ?? none;
}

/** Puts down what there is of a diagram's pictures, and closes every bitmap that is no longer in it. */
export function putPictures(diagramId: string, pictures: Pictures): void {
  const before = picturesOf(diagramId);
  usePictures.setState(({ byDiagram }) => ({ byDiagram: { ...byDiagram, [diagramId]: pictures } }));
  closeDropped(before, pictures);
}

/** Forgets the pictures of diagrams that are no longer on the table. */
function forgetOthers(kept: ReadonlySet<string>): void {
  const { byDiagram } = usePictures.getState();
  const gone = Object.keys(byDiagram).filter((id) => !kept.has(id));
  if (gone.length === 0) return;
  usePictures.setState({ byDiagram: Object.fromEntries(Object.entries(byDiagram).filter(([id]) => kept.has(id))) });
  for (const id of gone) closeDropped(byDiagram[id] ?? none, none);
}

function closeDropped(before: Pictures, after: Pictures): void {
  const kept = new Set([...(after.photo?.levels ?? []), ...(after.flat?.levels ?? [])]);
  for (const bitmap of [...(before.photo?.levels ?? []), ...(before.flat?.levels ?? [])]) {
    if (!kept.has(bitmap)) bitmap.close();
  }
}

useGarment.subscribe(({ garment }, before) => {
  if (garment?.diagrams === before.garment?.diagrams) return;
  forgetOthers(new Set(garment?.diagrams.map(({ id }) => id)));
});

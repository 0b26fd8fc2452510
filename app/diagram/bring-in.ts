import { create } from 'zustand';
import type { Diagram } from '../../core/garment/diagram';
import { addDiagram } from '../../core/garment/diagram-edits';
import { isPdf } from '../photo/header/picture-header';
import { openFile } from '../photo/open-photo';
import { openPdfBook, type PdfBook } from '../photo/pdf-book';
import { type PictureTrouble, putPictures, type ReadyPicture } from '../photo/picture-store';
import { useGarment } from '../state/garment-store';
import { newId } from '../state/new-id';
import { useTable } from '../state/table-store';
import { putPhoto } from '../storage/photos';
import { say } from '../ui/say';
import { diagramWords as words } from '../words/diagram';
import { MOST_WORKING_PX } from '../workers/photo-calls';
import { startingCorners } from './change-diagram';
import { useDesk } from './desk-store';
import { followedIn, seenIn } from './found-sides';
import { newDiagram, withoutEnding } from './new-diagram';
import { keepProposals, proposalsIn } from './take-proposal';
import { troubleSentence } from './trouble-sentence';

interface BringingIn {
  readonly busy: boolean;
  /** The share done of looking for its corners, and a way to stop that. */
  readonly looking: { readonly share: number; readonly stop: () => void } | undefined;
  /** Why the last one did not come in. */
  readonly refusal: string | undefined;
  /** A PDF of which she has still to choose the page. */
  readonly book: { readonly name: string; readonly pdf: PdfBook } | undefined;
}

/** A picture on its way in. */
export const useBringingIn = create<BringingIn>(() => ({
  busy: false,
  looking: undefined,
  refusal: undefined,
  book: undefined,
}));

/** Refuses in words, until the next picture comes. */
export function refuse(refusal: string): void {
  useBringingIn.setState({ busy: false, refusal });
  say(refusal);
}

/** Opens a file, keeps it untouched on the device and puts it on the table as a new diagram; of a PDF asks for the page. */
export async function bringIn(file: File): Promise<void> {
  leaveBook();
  const start = new Uint8Array(await file.slice(0, 1024).arrayBuffer());
  await (isPdf(start) ? openBook(file) : bringInPicture(file));
}

async function openBook(file: File): Promise<void> {
  useBringingIn.setState({ busy: true, refusal: undefined });
  const pdf = await openPdfBook(file);
  if (pdf.kind === 'book') useBringingIn.setState({ busy: false, book: { name: withoutEnding(file.name), pdf } });
  else refuse(words.pdf.refused[pdf.kind]);
}

/** Puts a PDF away without taking a page of it. */
export function leaveBook(): void {
  useBringingIn.getState().book?.pdf.close();
  useBringingIn.setState({ book: undefined });
}

/** Draws a page of the PDF in hand as finely as can be worked on, and brings that in as the picture. */
export async function bringInPage(number: number): Promise<void> {
  const { book } = useBringingIn.getState();
  if (!book) return;
  useBringingIn.setState({ busy: true, refusal: undefined });
  try {
    const page = await book.pdf.page(number);
    const canvas = new OffscreenCanvas(1, 1);
    await page.drawInto(canvas, MOST_WORKING_PX);
    const drawn = await canvas.convertToBlob({ type: 'image/png' });
    const file = new File([drawn], words.pdf.pageName(book.name, number), { type: 'image/png' });
    await bringInPicture(file, page.onPaper);
    leaveBook();
  } catch {
    refuse(words.pdf.pageRefused(number));
  }
}

async function bringInPicture(file: File, onPaper?: Diagram['onPaper']): Promise<void> {
  const photoId = newId();
  const kept = await openAndKeep(file, photoId);
  if (!kept) return;
  const opened: ReadyPicture = { ...kept, ...(onPaper ? { onPaper } : {}) };
  // What was scanned lay flat on the glass.
  const squareUp = opened.onPaper ? { kind: 'flat' as const } : startingCorners(opened);
  const proposals = squareUp.kind === 'flat' ? undefined : await lookForCorners(opened);
  const [best] = proposals ?? [];
  const { garment, edit } = useGarment.getState();
  if (!garment) return;
  const followed = best && followedIn(best);
  const found = best && { corners: best.corners, ...(followed ? { followed } : {}) };
  const bare = newDiagram(garment, { file, photoId, opened, squareUp: { ...squareUp, ...found } });
  const diagram = proposals && best ? { ...bare, seen: seenIn(proposals) } : bare;
  if (diagram.squareUp.kind === 'rectangle') keepProposals(diagram.id, proposals, diagram.squareUp.corners);
  putPictures(diagram.id, { photo: opened });
  edit(words.takenLabel, (now) => addDiagram(now, diagram));
  useDesk.setState({ showing: 'photo', corner: undefined, drawing: undefined, fresh: undefined });
  useTable.getState().setView('photo', undefined);
  useTable.getState().choose({ kind: 'diagram', diagramId: diagram.id });
  const taken = words.taken(diagram.name, opened.widthPx, opened.heightPx);
  say(best ? `${taken} ${words.square.search.on(best.kind, 1, proposals?.length ?? 1)}` : taken);
}

/** Proposals for the corners of a new picture; she may stop the search and put them in place herself. */
async function lookForCorners(opened: ReadyPicture) {
  const stopping = new AbortController();
  const onProgress = (share: number) =>
    useBringingIn.setState({ busy: true, looking: { share, stop: () => stopping.abort() } });
  onProgress(0);
  const proposals = await proposalsIn(opened, { signal: stopping.signal, onProgress });
  useBringingIn.setState({ busy: false, looking: undefined });
  return proposals;
}

/** Gives a diagram whose picture is not on this device its picture again; only the very same size will do. */
export async function bringBack(diagram: Diagram, file: File): Promise<void> {
  const opened = await openAndKeep(file, diagram.photoId, (picture) =>
    picture.widthPx === diagram.widthPx && picture.heightPx === diagram.heightPx
      ? undefined
      : words.wrongPicture(diagram.widthPx, diagram.heightPx),
  );
  if (opened) putPictures(diagram.id, { photo: opened });
}

async function openAndKeep(
  file: File,
  photoId: string,
  against: (picture: ReadyPicture) => string | undefined = () => undefined,
): Promise<ReadyPicture | undefined> {
  useBringingIn.setState({ busy: true, refusal: undefined });
  const opened = await openFile(file).catch((): PictureTrouble => ({ kind: 'damaged' }));
  if (opened.kind !== 'opened') {
    refuse(troubleSentence(opened));
    return undefined;
  }
  const objection = against(opened) ?? (await keep(file, photoId, opened));
  if (objection === undefined) {
    useBringingIn.setState({ busy: false });
    return opened;
  }
  for (const level of opened.levels) level.close();
  refuse(objection);
  return undefined;
}

/** Keeps the file as it came; a sentence when that cannot be. */
async function keep(file: File, id: string, { type, widthPx, heightPx }: ReadyPicture): Promise<string | undefined> {
  try {
    await putPhoto({ id, bytes: await file.arrayBuffer(), type, name: file.name, widthPx, heightPx });
    return undefined;
  } catch {
    return words.notStored;
  }
}

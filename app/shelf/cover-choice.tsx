import { useState } from 'react';
import type { Garment } from '../../core/garment/garment';
import { photoIdsOf } from '../../core/garment/photo-ids';
import { openFile } from '../photo/open-photo';
import { useGarment } from '../state/garment-store';
import { newId } from '../state/new-id';
import { flushJournal } from '../storage/journal';
import { putPhoto } from '../storage/photos';
import { ChooseFile } from '../ui/choose-file';
import { Note } from '../ui/note';
import { Pick } from '../ui/pick';
import { say } from '../ui/say';
import { coverWords as words } from '../words/shelf';
import styles from './shelf-room.module.css';

interface CoverChoiceProps {
  readonly garment: Garment;
  /** What the shelf shows of it has changed. */
  readonly onChange: () => void;
}

const PIECES = 'pieces';

/** Which picture a garment has on the shelf: its pieces as drawn, a photo it has, or another one. */
export function CoverChoice({ garment, onChange }: CoverChoiceProps) {
  const [trouble, setTrouble] = useState<string>();
  const [busy, setBusy] = useState(false);

  function choose(photoId: string | undefined) {
    useGarment.getState().edit(words.step, (now) => {
      if (now.id !== garment.id) return now;
      const { coverPhotoId: _, ...rest } = now;
      return photoId === undefined ? rest : { ...rest, coverPhotoId: photoId };
    });
    void flushJournal().then(onChange);
  }

  async function bring(file: File) {
    setBusy(true);
    setTrouble(await keepPicture(file, choose));
    setBusy(false);
  }

  return (
    <>
      <div className={styles.coverChoice}>
        <Pick
          label={words.cover}
          value={garment.coverPhotoId ?? PIECES}
          options={[{ value: PIECES, words: words.pieces }, ...photoOptions(garment)]}
          onChange={(to) => choose(to === PIECES ? undefined : to)}
        />
        <ChooseFile
          words={words.choose}
          icon="camera"
          accept="image/*"
          disabled={busy}
          onFile={(file) => void bring(file)}
        />
      </div>
      {trouble && <Note tone="stop">{trouble}</Note>}
    </>
  );
}

/** Every photo the garment has, by what it is of. */
function photoOptions(garment: Garment): { readonly value: string; readonly words: string }[] {
  let fittings = 0;
  return photoIdsOf(garment).map((value) => {
    const diagram = garment.diagrams.find(({ photoId }) => photoId === value);
    if (diagram) return { value, words: words.diagram(diagram.name) };
    const isOfFitting = garment.mockups?.some(({ pinned }) => pinned.some(({ photoId }) => photoId === value));
    if (!isOfFitting) return { value, words: words.own };
    fittings += 1;
    return { value, words: words.fitting(fittings) };
  });
}

/** Keeps a picture as it came and has it chosen; a sentence when that cannot be. */
async function keepPicture(file: File, choose: (photoId: string) => void): Promise<string | undefined> {
  const opened = await openFile(file).catch(() => ({ kind: 'damaged' }) as const);
  if (opened.kind !== 'opened') {
    return opened.kind === 'too-many-pixels' || opened.kind === 'no-memory'
      ? words.refused['too-large']
      : words.refused.unreadable;
  }
  for (const level of opened.levels) level.close();
  const { type, widthPx, heightPx } = opened;
  const id = newId();
  try {
    await putPhoto({ id, bytes: await file.arrayBuffer(), type, name: file.name, widthPx, heightPx });
  } catch {
    return words.notStored;
  }
  choose(id);
  say(words.taken);
  return undefined;
}

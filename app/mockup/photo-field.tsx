import { useEffect, useState } from 'react';
import { openFile } from '../photo/open-photo';
import type { PictureTrouble } from '../photo/picture-store';
import { newId } from '../state/new-id';
import { getPhoto, putPhoto } from '../storage/photos';
import { Button } from '../ui/button';
import { ChooseFile } from '../ui/choose-file';
import { Note } from '../ui/note';
import { diagramWords } from '../words/diagram';
import { mockupWords as words } from '../words/mockup';
import styles from './mockup.module.css';

interface PhotoFieldProps {
  readonly photoId: string | undefined;
  readonly onChange: (photoId: string | undefined) => void;
}

/** A photo of the fitting, from the camera or from a file. It is kept on the device as it came. */
export function PhotoField({ photoId, onChange }: PhotoFieldProps) {
  const [trouble, setTrouble] = useState<string>();
  const take = async (file: File) => {
    const kept = await keptPhoto(file);
    setTrouble(kept.kind === 'kept' ? undefined : kept.sentence);
    if (kept.kind === 'kept') onChange(kept.id);
  };
  return (
    <>
      {photoId !== undefined && <FittingPhoto photoId={photoId} alt={words.photoAlt('')} />}
      <div className={styles.row}>
        <ChooseFile accept="image/*" icon="camera" words={words.takePhoto} camera onFile={(file) => void take(file)} />
        <ChooseFile accept="image/*" icon="picture" words={words.choosePhoto} onFile={(file) => void take(file)} />
        {photoId !== undefined && (
          <Button icon="bin" onPress={() => onChange(undefined)}>
            {words.dropPhoto}
          </Button>
        )}
      </div>
      {trouble && <Note tone="warn">{trouble}</Note>}
    </>
  );
}

type Kept = { readonly kind: 'kept'; readonly id: string } | { readonly kind: 'refused'; readonly sentence: string };

/** Opens a picture to be sure it is one, and keeps it; or why that cannot be. */
async function keptPhoto(file: File): Promise<Kept> {
  try {
    const opened = await openFile(file);
    if (opened.kind !== 'opened') return { kind: 'refused', sentence: sentenceFor(opened) };
    for (const level of opened.levels) level.close();
    const { type, widthPx, heightPx } = opened;
    const id = newId();
    await putPhoto({ id, bytes: await file.arrayBuffer(), type, name: file.name, widthPx, heightPx });
    return { kind: 'kept', id };
  } catch {
    return { kind: 'refused', sentence: words.photoFailed };
  }
}

function sentenceFor(trouble: PictureTrouble): string {
  switch (trouble.kind) {
    case 'missing':
      return words.photoFailed;
    case 'other-format':
      return diagramWords.otherFormat[trouble.format];
    case 'too-many-pixels':
      return diagramWords.tooManyPixels(trouble.widthPx, trouble.heightPx);
    default:
      return diagramWords.refused[trouble.kind];
  }
}

/** A kept photo, small. */
export function FittingPhoto({ photoId, alt }: { readonly photoId: string; readonly alt: string }) {
  const [address, setAddress] = useState<string | 'gone'>();
  useEffect(() => {
    let made: string | undefined;
    let stale = false;
    getPhoto(photoId)
      .catch(() => undefined)
      .then((photo) => {
        if (stale) return;
        if (photo) made = URL.createObjectURL(new Blob([photo.bytes], { type: photo.type }));
        setAddress(made ?? 'gone');
      });
    return () => {
      stale = true;
      if (made !== undefined) URL.revokeObjectURL(made);
    };
  }, [photoId]);
  if (address === undefined) return null;
  if (address === 'gone') return <p className={styles.help}>{words.photoGone}</p>;
  return <img className={styles.photo} src={address} alt={alt} />;
}

import { useEffect, useRef, useState } from 'react';
import { openFile } from '../photo/open-photo';
import { getPhoto, putPhoto } from '../storage/photos';
import { Button } from '../ui/button';
import { Note } from '../ui/note';
import { mockupWords as words } from '../words/mockup';
import styles from './mockup.module.css';

interface PhotoFieldProps {
  readonly photoId: string | undefined;
  readonly onChange: (photoId: string | undefined) => void;
}

/** A photo of the fitting, from the camera or from a file. It is kept on the device as it came. */
export function PhotoField({ photoId, onChange }: PhotoFieldProps) {
  const [failed, setFailed] = useState(false);
  const take = async (file: File) => {
    const kept = await keptPhoto(file);
    setFailed(kept === undefined);
    if (kept !== undefined) onChange(kept);
  };
  return (
    <>
      {photoId !== undefined && <FittingPhoto photoId={photoId} alt={words.photoAlt('')} />}
      <div className={styles.row}>
        <PictureInput words={words.takePhoto} camera onFile={(file) => void take(file)} />
        <PictureInput words={words.choosePhoto} onFile={(file) => void take(file)} />
        {photoId !== undefined && (
          <Button icon="bin" onPress={() => onChange(undefined)}>
            {words.dropPhoto}
          </Button>
        )}
      </div>
      {failed && <Note tone="warn">{words.photoFailed}</Note>}
    </>
  );
}

/** Opens a picture to be sure it is one, and keeps it; its id, or `undefined` when that cannot be. */
async function keptPhoto(file: File): Promise<string | undefined> {
  try {
    const opened = await openFile(file);
    if (opened.kind !== 'opened') return undefined;
    for (const level of opened.levels) level.close();
    const { type, widthPx, heightPx } = opened;
    const id = crypto.randomUUID();
    await putPhoto({ id, bytes: await file.arrayBuffer(), type, name: file.name, widthPx, heightPx });
    return id;
  } catch {
    return undefined;
  }
}

interface PictureInputProps {
  readonly words: string;
  /** Asks for the camera itself, where the device has one. */
  readonly camera?: true;
  readonly onFile: (file: File) => void;
}

function PictureInput({ words: label, camera, onFile }: PictureInputProps) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <Button icon={camera ? 'camera' : 'picture'} onPress={() => input.current?.click()}>
        {label}
      </Button>
      <input
        ref={input}
        type="file"
        hidden
        aria-label={label}
        accept="image/*"
        {...(camera ? { capture: 'environment' as const } : {})}
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = '';
          if (file) onFile(file);
        }}
      />
    </>
  );
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

import { type DragEvent, useEffect, useState } from 'react';
import { type Carried, carriedBy, mayHoldPicture } from '../photo/picture-input';
import { diagramWords as words } from '../words/diagram';
import { refuse } from './bring-in';

/** Takes pictures that are dropped on an element or pasted anywhere in the room, outside of fields. */
export function usePictureInput(onFile: (file: File) => void) {
  const [over, setOver] = useState(false);

  useEffect(() => {
    const pasted = (event: ClipboardEvent) => {
      const inField = event.target instanceof HTMLElement && event.target.closest('input, textarea, select');
      const carried = carriedBy(event.clipboardData);
      // Words pasted into a field belong to the field.
      if (inField && carried.kind !== 'file') return;
      event.preventDefault();
      take(carried, onFile, words.noPicturePasted);
    };
    window.addEventListener('paste', pasted);
    return () => window.removeEventListener('paste', pasted);
  }, [onFile]);

  return {
    over,
    handlers: {
      onDragOver(event: DragEvent) {
        if (!mayHoldPicture(event.dataTransfer)) return;
        event.preventDefault();
        setOver(true);
      },
      onDragLeave(event: DragEvent) {
        if (!(event.relatedTarget instanceof Node) || !event.currentTarget.contains(event.relatedTarget))
          setOver(false);
      },
      onDrop(event: DragEvent) {
        event.preventDefault();
        setOver(false);
        take(carriedBy(event.dataTransfer), onFile, words.linkDropped);
      },
    },
  };
}

function take(carried: Carried, onFile: (file: File) => void, otherwise: string): void {
  if (carried.kind === 'file') onFile(carried.file);
  else if (carried.kind === 'link') refuse(words.linkDropped);
  else refuse(otherwise);
}

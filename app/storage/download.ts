import { storageWords } from '../words/storage';

/** Hands a file to the person, by the browser's own way of saving. */
export function download(bytes: Uint8Array<ArrayBuffer> | Blob, name: string, type: string): void {
  const url = URL.createObjectURL(bytes instanceof Blob ? bytes : new Blob([bytes], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The browser has taken the file by then; a minute is generous for a slow disk.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}

/** So many bytes of a name are kept: file systems hold 255, and an ending comes after it. */
const MOST_BYTES = 180;

/** A name as a file name: letters and figures of any script with their marks, and single hyphens. */
export function fileName(name: string): string {
  const safe = name
    .normalize('NFC')
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, '-')
    .replace(/^[-\p{M}]+|-+$/gu, '')
    .toLowerCase();
  return shortened(safe).replace(/-$/, '') || storageWords.unnamedFile;
}

/** Cut between letters, not within one. */
function shortened(name: string): string {
  const letters = [...name];
  const bytes = (kept: number) => new TextEncoder().encode(letters.slice(0, kept).join('')).length;
  let kept = Math.min(letters.length, MOST_BYTES);
  while (bytes(kept) > MOST_BYTES) kept -= 1;
  return letters.slice(0, kept).join('');
}

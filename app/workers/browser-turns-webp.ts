/** Two pixels side by side, with an EXIF entry that asks for a quarter turn. */
const SIDEWAYS =
  'UklGRlIAAABXRUJQVlA4WAoAAAAIAAAAAQAAAAAAVlA4TBEAAAAvAQAAAAfQ//73v/+BiOh/AABFWElGGgAAAE1NACoAAAAIAAEBEgADAAAAAQAGAAAAAAAA';

let asked: Promise<boolean> | undefined;

/** Whether the browser turns a WebP as its EXIF entry asks; not all do, though all turn a JPEG. */
export function browserTurnsWebp(): Promise<boolean> {
  asked ??= (async () => {
    const bytes = Uint8Array.from(atob(SIDEWAYS), (letter) => letter.charCodeAt(0));
    const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/webp' }));
    const isTurned = bitmap.height > bitmap.width;
    bitmap.close();
    return isTurned;
  })();
  return asked;
}

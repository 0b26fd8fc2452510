import * as fontkit from 'fontkit';

/** A font as it was read from its bytes. */
export interface FontFace {
  hasGlyphForCodePoint(point: number): boolean;
  /** The letters of a text as the font sets them. */
  layout(text: string, features?: unknown): unknown;
}

const faces = new WeakMap<Uint8Array, FontFace>();

/** The same bytes are read once: that takes as long as several pages. */
export function faceOf(bytes: Uint8Array): FontFace {
  const known = faces.get(bytes);
  if (known) return known;
  const face = fontkit.create(bytes as never) as unknown as FontFace;
  rememberTexts(face);
  faces.set(bytes, face);
  return face;
}

/** With more letters than this in hand all are let go of, and begun anew. */
const MOST_LETTERS = 100_000;

/** The same few words stand on every page and in every print: setting them takes longest of all that a page takes. */
function rememberTexts(face: FontFace): void {
  const layout = face.layout.bind(face);
  const set = new Map<string, unknown>();
  let letters = 0;
  face.layout = (text, features) => {
    if (features !== undefined) return layout(text, features);
    const known = set.get(text);
    if (known) return known;
    const run = layout(text);
    letters += text.length;
    if (letters > MOST_LETTERS) {
      set.clear();
      letters = text.length;
    }
    set.set(text, run);
    return run;
  };
}

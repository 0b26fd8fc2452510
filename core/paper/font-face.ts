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

/** Of more texts than this none is remembered any longer; one print has a few hundred. */
const MOST_TEXTS = 4000;

/** The same few words stand on every page and in every print: setting them takes longest of all that a page takes. */
function rememberTexts(face: FontFace): void {
  const layout = face.layout.bind(face);
  const set = new Map<string, unknown>();
  face.layout = (text, features) => {
    if (features !== undefined) return layout(text, features);
    const run = set.get(text) ?? layout(text);
    if (set.size >= MOST_TEXTS) set.clear();
    set.set(text, run);
    return run;
  };
}

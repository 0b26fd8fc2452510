import * as fontkit from 'fontkit';

/** A font as it was read from its bytes. */
export interface FontFace {
  hasGlyphForCodePoint(point: number): boolean;
}

const faces = new WeakMap<Uint8Array, FontFace>();

/** The same bytes are read once: that takes as long as several pages. */
export function faceOf(bytes: Uint8Array): FontFace {
  const known = faces.get(bytes);
  if (known) return known;
  const face = fontkit.create(bytes as never) as unknown as FontFace;
  faces.set(bytes, face);
  return face;
}

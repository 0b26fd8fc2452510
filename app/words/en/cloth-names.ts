import type { Garment } from '../../../core/garment/garment';
import type { ClothStrip } from '../../../core/garment/garment-cloth';

/** What cloths and what lies on them are called. */
export const clothNames = {
  cloth: (name: string) => name.trim() || 'Cloth without a name',
  /** Ids of laid things: a piece's or strip's own, with `/mirrored` for its other hand and `/pieced` for a joined part. */
  laid(id: string, pieces: Garment['pieces'], strips: readonly ClothStrip[]): string {
    const [own, ...parts] = id.split('/');
    const piece = pieces.find((one) => one.id === own);
    const strip = strips.find((one) => one.id === own);
    const name = piece ? piece.name || 'Piece without a name' : strip ? strip.name || 'Strip' : 'A piece that is gone';
    const other = parts.includes('mirrored') ? ', other hand' : '';
    return `${name}${other}${parts.includes('pieced') ? ', joined part' : ''}`;
  },
} as const;

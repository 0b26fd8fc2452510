import { describe, expect, it } from 'vitest';
import { lindenGarment } from '../../app/demo/linden-garment';
import { moveCorner } from '../../core/garment/move-point';
import { versionMark } from '../../core/garment/version-mark';
import { withPiece } from '../../core/garment/with-piece';

function linden() {
  let last = 0;
  return lindenGarment({ newId: () => `id${++last}`, today: '2026-01-02', photoId: 'photo' });
}

describe('versionMark', () => {
  it('is five plain signs, the same for the same pieces however the rest of the garment changes', () => {
    const mark = versionMark(linden());
    expect(mark).toMatch(/^[2-9A-HJKMNP-Z]{5}$/);
    const renamed = { ...linden(), name: 'Another name', remarks: 'and a remark' };
    expect(versionMark(renamed)).toBe(mark);
  });

  it('is another as soon as one corner has moved by a tenth of a millimetre', () => {
    const garment = linden();
    const piece = garment.pieces[0];
    const corner = piece?.corners[1];
    if (!piece || !corner) throw new Error('the demo has a panel');
    const moved = withPiece(garment, piece.id, (one) =>
      moveCorner(one, corner.id, { x: corner.at.x + 0.1, y: corner.at.y }),
    );
    expect(versionMark(moved)).not.toBe(versionMark(garment));
  });

  it('is the published 32-bit FNV-1a hash of the pieces as JSON, here of none: "[]"', () => {
    // Worked by hand from the published basis 2166136261 and prime 16777619 (Fowler, Noll, Vo).
    let hash = 2166136261n;
    for (const sign of '[]') hash = ((hash ^ BigInt(sign.charCodeAt(0))) * 16777619n) % 2n ** 32n;
    const signs = '23456789ABCDEFGHJKMNPQRSTUVWXYZ';
    let mark = '';
    for (let i = 0; i < 5; i++) {
      mark += signs[Number(hash % 31n)];
      hash /= 31n;
    }
    expect(versionMark({ pieces: [] })).toBe(mark);
  });
});

import { describe, expect, it } from 'vitest';
import { boxNear } from '../../app/table/piece-boxes';
import { movePiece } from '../../core/garment/move-piece';
import { panel } from '../draft/panel';

const other = { ...movePiece(panel, { dx: 700, dy: 40 }), id: 'q' };

describe('boxNear', () => {
  it('is that of the piece in hand, however far', () => {
    expect(boxNear([panel, other], 'p', { x: 900, y: 100 })).toMatchObject({ minX: 0, maxY: 520 });
  });

  it('is that of the nearest piece where none is in hand', () => {
    expect(boxNear([panel, other], undefined, { x: 600, y: 100 })).toMatchObject({ minX: 700, maxY: 560 });
    expect(boxNear([panel, other], 'gone', { x: 300, y: 100 })).toMatchObject({ minX: 0, maxY: 520 });
    expect(boxNear([], undefined, { x: 0, y: 0 })).toBeUndefined();
  });
});

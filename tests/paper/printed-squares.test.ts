import { describe, expect, it } from 'vitest';
import { movePiece } from '../../core/garment/move-piece';
import { removePiece } from '../../core/garment/piece-list';
import { readGarment } from '../../core/garment/schema';
import { printedFindings } from '../../core/paper/pages-out-of-date';
import { addPrinting, setUnused, squaresPrintingOf } from '../../core/paper/printing-of';
import { inches } from '../../core/units/inch';
import { garmentOf, rectangle } from './pieces';

const version = { kind: 'changed', mark: 'ABCDE' } as const;
const made = (id: string, today: string) => ({ id, today, version });

function start() {
  const front = { ...rectangle(0, 0, inches(11), inches(29)), id: 'front', name: 'Front' };
  const back = { ...rectangle(400, 0, inches(13), inches(31)), id: 'back', name: 'Back' };
  const garment = garmentOf([front, back]);
  return addPrinting(garment, squaresPrintingOf(garment.pieces, made('s1', '2026-03-02')));
}

/** The corner at the right of the top moved out. */
function longer(garment: ReturnType<typeof start>, id: string, by: number) {
  return {
    ...garment,
    pieces: garment.pieces.map((piece) =>
      piece.id === id
        ? {
            ...piece,
            corners: piece.corners.map((corner, i) =>
              i === 1 ? { ...corner, at: { x: corner.at.x + by, y: corner.at.y } } : corner,
            ),
          }
        : piece,
    ),
  };
}

describe('squares sheets that were made', () => {
  it('are current as long as the piece is as it was, wherever it lies', () => {
    expect(printedFindings(start())).toEqual([]);
    const garment = start();
    const moved = { ...garment, pieces: garment.pieces.map((piece) => movePiece(piece, { dx: 123.4, dy: -56.7 })) };
    expect(printedFindings(moved)).toEqual([]);
  });

  it('are out of date as soon as the piece is changed, that piece alone', () => {
    expect(printedFindings(longer(start(), 'back', 3))).toEqual([
      {
        kind: 'squares-out-of-date',
        weight: 'warn',
        place: { kind: 'piece', pieceId: 'back' },
        date: '2026-03-02',
      },
    ]);
  });

  it('are made good by a new sheet, and said no more once they are not used', () => {
    const changed = longer(start(), 'back', 3);
    const anew = addPrinting(changed, squaresPrintingOf(changed.pieces.slice(1), made('s2', '2026-03-05')));
    expect(printedFindings(anew)).toEqual([]);
    expect(printedFindings(setUnused(changed, 's1', '2026-03-05'))).toEqual([]);
  });

  it('of a piece that is gone are to be put away', () => {
    expect(printedFindings(removePiece(start(), 'front'))).toMatchObject([
      { kind: 'printed-piece-gone', name: 'Front' },
    ]);
  });

  it('are kept in the garment as stored', () => {
    const stored = JSON.parse(JSON.stringify(start()));
    expect(readGarment(stored)).toMatchObject({ kind: 'garment' });
  });
});

import { describe, expect, it } from 'vitest';
import { lindenGarment } from '../../app/demo/linden-garment';
import { nextStep } from '../../app/guide/next-step';
import { beforeYouCut } from '../../core/check/before-you-cut';
import { setAllowance, setRole } from '../../core/garment/edge-edits';
import type { Garment } from '../../core/garment/garment';
import type { Piece } from '../../core/garment/piece';

let made = 0;
const demo = lindenGarment({ newId: () => `id-${made++}`, today: '2026-03-04', photoId: 'photo' });
const next = (garment: Garment) => nextStep(garment, beforeYouCut(garment));
const withPieces = (change: (piece: Piece) => Piece): Garment => ({ ...demo, pieces: demo.pieces.map(change) });
const bare: Garment = { ...demo, pieces: [], rings: [], diagrams: [] };

describe('what comes next', () => {
  it('begins with a picture, and goes on to a known length and then to the lines', () => {
    expect(next(bare)).toEqual({ name: 'picture', room: 'diagram' });
    const pictured = { ...demo, pieces: [], rings: [] };
    const unknown = pictured.diagrams.map((diagram) => ({ ...diagram, knownLengths: [] }));
    expect(next({ ...pictured, diagrams: unknown })).toMatchObject({ name: 'known-length', room: 'diagram' });
    expect(next(pictured)).toEqual({ name: 'trace', room: 'draft' });
  });

  it('asks for a measure that a known length rests on before anything is traced', () => {
    const wearer = { ...demo.wearer, sets: demo.wearer.sets.map((set) => ({ ...set, measures: {} })) };
    expect(next({ ...demo, pieces: [], rings: [], wearer })).toMatchObject({ name: 'measures', room: 'wearer' });
  });

  it('asks of a piece what it lacks, one thing after another', () => {
    const [piece] = demo.pieces;
    const fold = piece?.edges.find(({ role }) => role === 'fold');
    if (!piece || !fold) throw new Error('the demo has a piece cut on the fold');
    expect(next(withPieces((one) => ({ ...one, drawnAs: 'not-known' }))).name).toBe('drawn-as');
    expect(next(withPieces((one) => setRole(one, fold.id, 'seam')))).toEqual({
      name: 'fold-edge',
      room: 'draft',
      chosen: { kind: 'piece', pieceId: piece.id },
    });
    const third = piece.edges[2];
    if (!third) throw new Error('the panel has four edges');
    const unsaid = withPieces((one) => setAllowance(one, third.id, undefined));
    expect(next(unsaid)).toEqual({
      name: 'allowance',
      room: 'draft',
      chosen: { kind: 'edge', pieceId: piece.id, edgeId: third.id },
    });
    const { grain: _, ...ungrained } = piece;
    expect(next({ ...demo, pieces: [ungrained] }).name).toBe('grain');
  });

  it('leads to the room where each thing is done, and passes over what is put off', () => {
    const ringless = { ...demo, rings: [] };
    const open = beforeYouCut(ringless);
    expect(nextStep(ringless, open)).toMatchObject({ name: 'pair', room: 'seams' });
    expect(nextStep(ringless, open, ['pair'])).toMatchObject({ name: 'ring', room: 'fit' });
    expect(nextStep(demo, beforeYouCut(demo), ['pair'])).toMatchObject({ name: 'curved-waist', room: 'fit' });
  });

  it('ends at the list, with what must be settled before what is only worth a look', () => {
    const everything = ['pair', 'curved-waist', 'opening', 'mock-up', 'cloth', 'lay', 'pages', 'proof'] as const;
    const warn = { kind: 'no-grain', weight: 'warn', place: { kind: 'piece', pieceId: 'p' } } as const;
    const stop = { kind: 'not-worked-out', weight: 'stop', place: { kind: 'piece', pieceId: 'q' } } as const;
    expect(nextStep(demo, [warn, stop], [...everything, 'grain'])).toEqual({
      name: 'settle',
      room: 'draft',
      chosen: { kind: 'piece', pieceId: 'q' },
    });
    expect(nextStep(demo, [], everything)).toEqual({ name: 'cut', room: 'check' });
  });
});

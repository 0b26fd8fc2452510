import { describe, expect, it } from 'vitest';
import { bandSide, looseEdges, roleAtEnd, seamInFront, seamLines, sewableEdges } from '../../app/seams/seam-sums';
import { roomOf } from '../../app/state/findings-store';
import { beforeYouCut } from '../../core/check/before-you-cut';
import { withPiece } from '../../core/garment/with-piece';
import { walkOfSeam } from '../../core/seams/seam-walk';
import { inches } from '../../core/units/inch';
import { bandSeam, centreBackSeam, sideSeam, skirtAndBand } from './skirt-and-band';

const sewn = { ...skirtAndBand(), seams: [centreBackSeam, sideSeam, bandSeam] };

describe('seamLines(garment)', () => {
  it('puts the seam furthest from what is meant first, and one that agrees with itself last', () => {
    expect(seamLines(sewn).map(({ seam }) => seam.id)).toEqual(['band', 'side', 'centre-back']);
    const lapped = { ...sewn, seams: [{ ...bandSeam, ease: inches(-1) }, sideSeam] };
    expect(seamLines(lapped).map(({ seam }) => seam.id)).toEqual(['side', 'band']);
  });
});

describe('sewableEdges(garment) and looseEdges(garment)', () => {
  it('leave out folds, and what is in a seam already', () => {
    expect(sewableEdges(sewn).map(({ edge }) => edge.role)).not.toContain('fold');
    expect(sewableEdges(sewn)).toHaveLength(3 + 4 + 3);
    expect(looseEdges({ ...sewn, seams: [sideSeam] }).map(({ edgeId }) => edgeId)).toEqual(['back-1', 'band-2']);
  });
});

describe('bandSide(garment, seam)', () => {
  it('is the side that is no waist, whichever way round the seam was paired', () => {
    expect(bandSide(sewn, bandSeam)).toBe('other');
    expect(bandSide(sewn, { one: bandSeam.other, other: bandSeam.one })).toBe('one');
    expect(bandSide(sewn, sideSeam)).toBeUndefined();
  });

  it('is the side of fewer edges where both are called a waist', () => {
    const named = withPiece(sewn, 'band', (piece) => ({
      ...piece,
      edges: piece.edges.map((edge) => (edge.id === 'band-2' ? { ...edge, role: 'waist' as const } : edge)),
    }));
    expect(bandSide(named, bandSeam)).toBe('other');
  });
});

describe('roleAtEnd(walk, end)', () => {
  it('says what is drawn beside the first side at either end of the walk', () => {
    const walk = walkOfSeam(sewn, sideSeam);
    const turned = walkOfSeam(sewn, { ...sideSeam, one: sideSeam.other, other: sideSeam.one });
    expect(walk && [roleAtEnd(walk, 'at-start'), roleAtEnd(walk, 'at-end')]).toEqual(['waist', 'hem']);
    expect(turned && [roleAtEnd(turned, 'at-start'), roleAtEnd(turned, 'at-end')]).toEqual(['hem', 'waist']);
  });
});

describe('seamInFront(garment, edge)', () => {
  it('takes up the seam of an edge that is off', () => {
    expect(seamInFront(sewn, { pieceId: 'back', edgeId: 'back-3' })?.id).toBe('side');
    expect(seamInFront(sewn, { pieceId: 'front', edgeId: 'front-2' })).toBeUndefined();
  });

  it('takes up the side seam where the waist peaks there, though the waist is sewn to a band', () => {
    const lapped = { ...sewn, seams: [{ ...bandSeam, ease: inches(-1) }, sideSeam] };
    expect(seamInFront(lapped, { pieceId: 'front', edgeId: 'front-0' })?.id).toBe('side');
  });
});

it('what is found in seams, and a waist that peaks over one, is mended in the Seams room', () => {
  const found = beforeYouCut({ ...sewn, seams: [sideSeam] });
  const roomsOf = (kind: string) => found.filter((finding) => finding.kind === kind).map(roomOf);
  for (const kind of ['seam-off', 'seam-notches-off', 'edge-unpaired', 'waist-peak']) {
    expect(roomsOf(kind)).toEqual(['seams']);
  }
});

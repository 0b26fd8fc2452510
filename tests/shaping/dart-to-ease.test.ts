import { describe, expect, it } from 'vitest';
import type { Piece } from '../../core/garment/piece';
import { pieceOf } from '../../core/garment/with-piece';
import { netEdgeLength } from '../../core/seams/edge-length';
import { dartToGathers, dartToSeamEase } from '../../core/shaping/dart-to-ease';
import { linden } from '../garment/linden';
import { traced } from './traced';

const skirt = traced('skirt', [
  [[0, 0], 'waist'],
  [[260, 0], 'seam'],
  [[300, 640], 'hem'],
  [[0, 640], 'fold'],
]);
const waist = skirt.edges[0]?.id ?? '';
const darted: Piece = {
  ...skirt,
  darts: [{ id: 'd', edgeId: waist, along: 130, width: 22, point: { x: 130, y: 120 } }],
};

describe('dartToGathers(piece, dart, stretch)', () => {
  it('draws the width of the dart up over the stretch: the edge is sewn as long as before', () => {
    const made = dartToGathers(darted, 'd', { id: 'g', from: 50, to: 230 });
    if ('why' in made) throw new Error(made.why);
    expect(made.darts).toEqual([]);
    expect(made.fullness).toEqual([{ kind: 'gathers', id: 'g', edgeId: waist, from: 50, to: 230, into: 158 }]);
    expect(netEdgeLength(made, waist)).toBeCloseTo(238, 9);
  });

  it('refuses what has no room, no dart or no stretch', () => {
    const stretch = { id: 'g', from: 120, to: 141 };
    expect(dartToGathers(darted, 'd', stretch)).toEqual({ kind: 'dart-not-eased', why: 'no-room' });
    expect(dartToGathers(darted, 'x', stretch)).toEqual({ kind: 'dart-not-eased', why: 'no-dart' });
    expect(dartToGathers(darted, 'd', { ...stretch, to: 999 })).toEqual({
      kind: 'dart-not-eased',
      why: 'no-such-stretch',
    });
  });
});

describe('dartToSeamEase(garment, piece, dart)', () => {
  it('lets the seam mean what the dart took up, by as often as the edge is in it, on whichever side', () => {
    const band = traced('band', [
      [[0, 0], 'finished'],
      [[480, 0], 'finished'],
      [[480, 30], 'seam'],
      [[0, 30], 'finished'],
    ]);
    const edge = { pieceId: band.id, edgeId: band.edges[2]?.id ?? '' };
    const garment = {
      ...linden(),
      pieces: [darted, band],
      rings: [],
      seams: [
        {
          id: 's',
          name: '',
          one: [{ pieceId: darted.id, edgeId: waist, times: 2 }],
          other: [edge],
          ease: 5,
          way: 'opposite' as const,
        },
        {
          id: 't',
          name: '',
          one: [edge],
          other: [{ pieceId: darted.id, edgeId: waist }],
          ease: 0,
          way: 'opposite' as const,
        },
      ],
    };
    const made = dartToSeamEase(garment, darted.id, 'd');
    expect(pieceOf(made, darted.id)?.darts).toEqual([]);
    expect(made.seams?.map(({ ease }) => ease)).toEqual([49, -22]);
    expect(dartToSeamEase(garment, darted.id, 'x')).toBe(garment);
  });
});

import { describe, expect, it } from 'vitest';
import { bindingSizes, placketSizes, stripPiece } from '../../core/seams/strips';
import { inches, MM_PER_INCH } from '../../core/units/inch';
import { idsInOrder } from '../garment/linden';

const binding = { edges: inches(20), finished: inches(0.5), as: { kind: 'folded-over' } } as const;

describe('placketSizes', () => {
  it('is twice the slit long and 2 1/2 in wide, 1 in finished (Ingalls, Text-Book on Domestic Art, 1911)', () => {
    expect(placketSizes({ slit: inches(7) })).toEqual({ length: inches(14), width: inches(2.5), finished: inches(1) });
    expect(placketSizes({ slit: 0 })).toBeUndefined();
  });
});

describe('bindingSizes', () => {
  it('is cut four times its finished width: 1/2 in from 2 in (common practice)', () => {
    expect(bindingSizes(binding)?.width).toBeCloseTo(inches(2), 9);
    const facing = bindingSizes({ ...binding, as: { kind: 'facing', allowance: inches(3 / 8) } });
    expect(facing?.width).toBeCloseTo(inches(1.75), 9);
  });

  it('comes from a square of the root of length times width: 250 in of 2 from 22.36 in (common practice)', () => {
    const sizes = bindingSizes({ ...binding, edges: inches(250) });
    expect((sizes?.square ?? 0) / MM_PER_INCH).toBeCloseTo(22.36, 2);
  });

  it('adds what every join takes: 100 in from strips of 36 with 1/2 in joins is three of them and 101 in', () => {
    const sizes = bindingSizes({ ...binding, edges: inches(100), longest: inches(36), join: inches(0.5) });
    expect(sizes?.strips).toBe(3);
    expect((sizes?.length ?? 0) / MM_PER_INCH).toBeCloseTo(101, 9);
    expect(bindingSizes({ ...binding, longest: 9, join: 11 })).toBeUndefined();
  });
});

describe('stripPiece', () => {
  it('lies on the straight of the cloth or at half a right angle to it, its turnings in the outline', () => {
    const sizes = { length: 500, width: 63.5, finished: 25.4 };
    const made = (grain: 'straight' | 'bias') =>
      stripPiece(sizes, { newId: idsInOrder(), name: 'Strip', grain, count: 2 });
    const angle = ({ grain }: ReturnType<typeof made>) =>
      grain && Math.atan2(grain.to.y - grain.from.y, grain.to.x - grain.from.x);
    expect(angle(made('straight'))).toBeCloseTo(0, 12);
    expect(angle(made('bias'))).toBeCloseTo(-Math.PI / 4, 12);
    expect(made('bias')).toMatchObject({ drawnAs: 'included', cut: { how: 'single', count: 2 } });
  });
});

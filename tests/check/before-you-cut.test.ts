import { describe, expect, it } from 'vitest';
import { beforeYouCut, type Finding } from '../../core/check/before-you-cut';
import type { Piece } from '../../core/garment/piece';
import { linden } from '../garment/linden';
import { at, pieceOf } from '../seams/pieces';

/** What is said of one piece alone. */
function saidOf(more: Partial<Piece>, allowances: readonly (number | undefined)[] = [9, 11, 13]): Finding[] {
  const sides = allowances.map((allowance) => ({ allowance }));
  const piece = { ...pieceOf([at(0, 0), at(210, 15), at(120, 340)], sides), ...more };
  const found = beforeYouCut({ ...linden(), pieces: [piece], rings: [] });
  return found.filter(({ place }) => place.kind === 'piece' && place.pieceId === 'p');
}

const grain = { from: at(90, 60), to: at(95, 190) };
const kinds = (found: readonly Finding[]) => found.map(({ kind, weight }) => `${kind} ${weight}`);

describe('beforeYouCut', () => {
  it('has nothing to say of a piece with name, grain and allowances', () => {
    expect(saidOf({ grain })).toEqual([]);
  });

  it('stops at an outline of which nobody knows what it includes, and warns of no grain and no name', () => {
    expect(kinds(saidOf({ drawnAs: 'not-known', name: '  ' }))).toEqual([
      'no-name warn',
      'drawn-as-not-known stop',
      'no-grain warn',
    ]);
  });

  it('counts the edges without an allowance; nought is one, and a fold or a drawing that has them needs none', () => {
    const [finding] = saidOf({ grain }, [undefined, 0, undefined]);
    expect(finding).toMatchObject({ kind: 'allowance-not-said', weight: 'stop', edges: 2 });
    expect(saidOf({ grain, drawnAs: 'included' }, [undefined, 7, undefined])).toEqual([]);
    const piece = pieceOf(
      [at(0, 0), at(210, 15), at(120, 340)],
      [{ role: 'fold' }, { allowance: 5 }, { allowance: 6 }],
    );
    const found = beforeYouCut({ ...linden(), pieces: [{ ...piece, grain }], rings: [] });
    expect(kinds(found)).not.toContain('allowance-not-said stop');
  });

  it('gathers every room in the order of the job, each finding where it can be mended', () => {
    const { scaleProof: _, ...garment } = linden();
    const { wearer } = garment;
    const sets = wearer.sets.map((set) => ({ ...set, measures: { ...set.measures, neck: { length: 900 } } }));
    const { grain: __, ...panel } = garment.pieces[0] as Piece;
    const found = beforeYouCut({ ...garment, wearer: { ...wearer, sets }, pieces: [panel], rings: [] });
    const order = ['measure-unlikely', 'no-known-length', 'no-ring', 'no-grain', 'scale-not-proved'];
    const places = order.map((kind) => found.findIndex((finding) => finding.kind === kind));
    expect(places).not.toContain(-1);
    expect(places.toSorted((a, b) => a - b)).toEqual(places);
  });
});

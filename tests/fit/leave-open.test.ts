import { describe, expect, it } from 'vitest';
import { leaveOpen, seamsFromWaist } from '../../core/fit/leave-open';
import { longestOpening } from '../../core/fit/opening';
import { girthsOf } from '../../core/fit/round-body';
import { wearingFindings } from '../../core/fit/wearing';
import { addSeam } from '../../core/garment/seam-edits';
import { inches } from '../../core/units/inch';
import { straightGore, straightPanel } from '../shaping/traced';
import { figure, garmentOf } from './skirts';

const newIds = () => {
  let count = 0;
  return () => `new-${++count}`;
};

describe('leaveOpen', () => {
  const gore = straightGore(inches(7), inches(10), inches(8));
  const { garment, ring } = garmentOf([gore], figure);
  const [right, left] = seamsFromWaist(garment, ring);

  it('finds the seams that come down from the waist, whichever way round they are drawn', () => {
    expect([right?.edgeId, left?.edgeId]).toEqual([gore.edges[1]?.id, gore.edges[3]?.id]);
    expect([right?.waistAt, left?.waistAt]).toEqual(['start', 'end']);
  });

  it('opens the uppermost 7 in of an edge and of the one sewn to it, and the seam keeps both parts of each', () => {
    if (!right || !left) throw new Error('two seams');
    const paired = addSeam(garment, { id: 's', name: '', one: [right], other: [left], ease: 0, way: 'opposite' });
    const after = leaveOpen(paired, ring, right, inches(7), newIds());
    const [piece] = after.pieces;
    expect(piece?.edges.map(({ role }) => role)).toEqual(['waist', 'opening', 'seam', 'hem', 'seam', 'opening']);
    expect(longestOpening(after, ring)?.length).toBeCloseTo(inches(7), 3);
    expect(after.seams?.[0]?.one.map(({ edgeId }) => edgeId)).toEqual([piece?.edges[1]?.id, piece?.edges[2]?.id]);
    expect(after.seams?.[0]?.other.map(({ edgeId }) => edgeId)).toEqual([piece?.edges[4]?.id, piece?.edges[5]?.id]);
  });

  it('of a seam no deeper than wanted opens the whole edge, and leaves the other side closed when nothing is sewn to it', () => {
    if (!right) throw new Error('a seam');
    const after = leaveOpen(garment, ring, right, right.length, newIds());
    expect(after.pieces[0]?.edges.map(({ role }) => role)).toEqual(['waist', 'opening', 'hem', 'seam']);
  });

  it('as deep as the finding asks, ends the finding', () => {
    const on = garmentOf(
      [{ ...straightPanel(inches(7), inches(9.5), inches(8)), cut: { how: 'fold', count: 2 } }],
      figure,
    );
    const [finding] = wearingFindings(on.garment, on.ring, girthsOf(on.garment, on.ring));
    const [seam] = seamsFromWaist(on.garment, on.ring);
    if (finding?.kind !== 'no-opening' || !seam) throw new Error('the waist cannot pass over the hip');
    const after = leaveOpen(on.garment, on.ring, seam, finding.depth, newIds());
    const kinds = wearingFindings(after, on.ring, girthsOf(after, on.ring)).map(({ kind }) => kind);
    expect(kinds).not.toContain('no-opening');
    expect(kinds).not.toContain('opening-short');
  });
});

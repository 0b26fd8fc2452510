import { expect, it } from 'vitest';
import { addCutting, changedSinceCut, cuttingFindings, removeCutting } from '../../core/garment/cutting';
import type { Garment } from '../../core/garment/garment';
import { removePiece } from '../../core/garment/piece-list';
import { readGarment } from '../../core/garment/schema';
import { withPiece } from '../../core/garment/with-piece';
import { linden } from './linden';

const cut = (from: 'mock-up' | 'cloth', garment: Garment = linden()) =>
  addCutting(garment, { id: from, date: '2026-11-07', version: 3, from, of: garment });
const changed = (garment: Garment) => withPiece(garment, 'panel', (piece) => ({ ...piece, remarks: 'longer' }));

it('says nothing while the draft is as it was cut, read again from storage too', () => {
  const garment = cut('cloth');
  expect(cuttingFindings(garment)).toEqual([]);
  const read = readGarment(JSON.parse(JSON.stringify(garment)));
  expect(read.kind === 'garment' && cuttingFindings(read.garment)).toEqual([]);
});

it('warns of cloth that is cut and drawn otherwise since, with the pieces', () => {
  expect(cuttingFindings(changed(cut('cloth')))).toMatchObject([
    { kind: 'changed-since-cut', weight: 'warn', version: 3, date: '2026-11-07', pieceIds: ['panel'] },
  ]);
  expect(cuttingFindings(removePiece(cut('cloth'), 'panel'))).toMatchObject([{ pieceIds: ['panel'] }]);
});

it('a mock-up is cut to be changed: its pieces are told and not warned of', () => {
  const garment = changed(cut('mock-up'));
  expect(cuttingFindings(garment)).toEqual([]);
  const [cutting] = garment.cuttings ?? [];
  expect(cutting && changedSinceCut(garment, cutting)).toEqual(['panel']);
});

it('is taken out again without a trace', () => {
  expect(removeCutting(cut('cloth'), 'cloth')).toEqual(linden());
  const garment = cut('cloth');
  expect(removeCutting(garment, 'other')).toBe(garment);
});

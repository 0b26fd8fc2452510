import { expect, it } from 'vitest';
import type { Finding } from '../../core/check/before-you-cut';
import { newlyFound } from '../../core/check/newly-found';

const at = (pieceId: string) => ({ kind: 'piece', pieceId }) as const;
const noGrain = (pieceId: string): Finding => ({ kind: 'no-grain', weight: 'warn', place: at(pieceId) });
const unsaid = (edges: number): Finding => ({ kind: 'allowance-not-said', weight: 'stop', place: at('front'), edges });

it('newlyFound settles nothing where a panel has gone missing, since little else is looked at then', () => {
  const place = { kind: 'ring', ringId: 'skirt' } as const;
  const missing: Finding = {
    kind: 'panel-missing',
    weight: 'stop',
    place,
    girth: 'hip',
    total: 480,
    wanted: 966,
    parts: 2,
  };
  expect(newlyFound([noGrain('front')], [missing])).toEqual({ appears: [missing], settled: [] });
});

it('newlyFound names what appears and what is settled, and passes over what only changed its number', () => {
  const found = newlyFound([noGrain('front'), unsaid(3)], [noGrain('back'), unsaid(2)]);
  expect(found.appears).toEqual([noGrain('back')]);
  expect(found.settled).toEqual([noGrain('front')]);
});

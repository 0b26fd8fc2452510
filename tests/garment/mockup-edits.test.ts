import { describe, expect, it } from 'vitest';
import type { Mockup, PinnedChange } from '../../core/garment/mockup';
import {
  addMockup,
  changeMockup,
  putPinned,
  removeMockup,
  removePinned,
  settlePinned,
} from '../../core/garment/mockup-edits';
import { readGarment } from '../../core/garment/schema';
import { linden } from './linden';

const { mockups: _, ...empty } = linden();
const edge = { pieceId: empty.pieces[0]?.id ?? '', edgeId: empty.pieces[0]?.edges[1]?.id ?? '' };
const change = (id: string): PinnedChange => ({
  id,
  what: { kind: 'edge', edge, pins: [{ along: 70, by: 11 }], share: 0.5 },
  side: 'both',
  note: '',
  state: { kind: 'noted' },
});
const mockup = (id: string, pinned: readonly PinnedChange[] = []): Mockup => ({
  id,
  name: id,
  made: '2026-03-07',
  version: 3,
  mark: 'ABCDE',
  note: '',
  pinned,
});
const two = addMockup(addMockup(empty, mockup('a', [change('p'), change('q')])), mockup('b'));

describe('edits of mock-ups', () => {
  it('adds the newest last, and what is made can be stored and read', () => {
    expect(two.mockups?.map(({ id }) => id)).toEqual(['a', 'b']);
    expect(readGarment(JSON.parse(JSON.stringify(two)))).toEqual({ kind: 'garment', garment: two });
  });

  it('changes one and leaves the other and the pieces the same objects', () => {
    const named = changeMockup(two, 'b', (one) => ({ ...one, name: 'In calico' }));
    expect(named.mockups?.[1]?.name).toBe('In calico');
    expect(named.mockups?.[0]).toBe(two.mockups?.[0]);
    expect(named.pieces).toBe(two.pieces);
    expect(changeMockup(two, 'none', () => mockup('x'))).toBe(two);
  });

  it('takes one away, and with the last of them the list', () => {
    expect(removeMockup(two, 'a').mockups?.map(({ id }) => id)).toEqual(['b']);
    expect('mockups' in removeMockup(removeMockup(two, 'a'), 'b')).toBe(false);
    expect(removeMockup(two, 'none')).toBe(two);
  });

  it('puts down a change, or the changed one in its place, and removes it', () => {
    const more = putPinned(two, 'b', change('r'));
    expect(more.mockups?.[1]?.pinned).toEqual([change('r')]);
    const left = putPinned(two, 'a', { ...change('p'), side: 'left' });
    expect(left.mockups?.[0]?.pinned.map(({ id, side }) => [id, side])).toEqual([
      ['p', 'left'],
      ['q', 'both'],
    ]);
    expect(removePinned(two, 'a', 'p').mockups?.[0]?.pinned.map(({ id }) => id)).toEqual(['q']);
    expect(removePinned(two, 'a', 'none')).toBe(two);
  });

  it('settles some, declines with a reason and takes back to noted, the pieces as they were', () => {
    const state = { kind: 'declined', date: '2026-03-08', reason: 'It was the pin' } as const;
    const declined = settlePinned(two, 'a', ['q'], state);
    expect(declined.mockups?.[0]?.pinned.map((one) => one.state)).toEqual([{ kind: 'noted' }, state]);
    expect(declined.pieces).toBe(two.pieces);
    expect(settlePinned(declined, 'a', ['q'], { kind: 'noted' })).toEqual(two);
    expect(settlePinned(two, 'a', ['none'], state)).toBe(two);
  });
});

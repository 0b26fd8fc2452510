import { describe, expect, it } from 'vitest';
import { findingSentence } from '../../app/words/findings';
import { carryNoteSentence, notCarriedSentence, pinnedSentence } from '../../app/words/mockup';
import type { Garment } from '../../core/garment/garment';
import type { PinnedWhat } from '../../core/garment/mockup';
import { withEdge, withPiece } from '../../core/garment/with-piece';
import { mockupFindings } from '../../core/mockup/mockup-findings';
import { pinnedSaying } from '../../core/mockup/pinned-saying';
import { inches } from '../../core/units/inch';
import { lengthOf } from './moved';
import { back, edges, front, frontSeam, gore, pinned, skirt, withMockup } from './three-panels';

const named: Garment = withPiece(skirt, front.id, (piece) =>
  withEdge(piece, edges.front.edgeId, (edge) => ({ ...edge, name: 'side' })),
);
const said = (what: PinnedWhat, garment = named) => pinnedSaying(garment, { what });
/** As it reads, with plain spaces. */
const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const notCarried = (...said: Parameters<typeof notCarriedSentence>) => plain(notCarriedSentence(...said));
const carryNote = (...said: Parameters<typeof carryNoteSentence>) => plain(carryNoteSentence(...said));
const sentence = (what: PinnedWhat, garment = named) => plain(pinnedSentence(garment, pinned('p', what)));
const edge = (along: number, by: number) => ({ along: inches(along), by: inches(by) });

describe('what a pinned change says', () => {
  it('counts from the waist down, whichever way the edge is drawn', () => {
    const length = lengthOf(skirt, edges.goreFront);
    const what = { kind: 'edge', edge: edges.goreFront, pins: [{ along: length - 70, by: 11 }], share: 0.5 } as const;
    const saying = said({ ...what, to: length - 30 });
    expect(saying).toMatchObject({ kind: 'edge', from: 'waist', seam: { id: frontSeam.id, one: [edges.goreFront] } });
    if (saying.kind !== 'edge') throw new Error(saying.kind);
    expect(saying.pins[0]?.at).toMatchObject({ kind: 'along' });
    expect(saying.pins[0]?.at.kind === 'along' ? saying.pins[0].at.far : 0).toBeCloseTo(70, 9);
    expect(saying.fades[0]?.kind === 'along' ? saying.fades[0].far : 0).toBeCloseTo(30, 9);
    expect(saying.fades[1]).toEqual({ kind: 'end', beyond: 'hem' });
  });

  it('goes on counting from where the waist was when it was pinned, on a draft that has grown', () => {
    const length = lengthOf(skirt, edges.goreFront);
    const what = { kind: 'edge', edge: edges.goreFront, pins: [{ along: length - 70, by: 11 }], share: 0.5 } as const;
    const longer = withPiece(named, gore.id, (piece) => ({
      ...piece,
      corners: piece.corners.map((c, i) => (i < 2 ? c : { ...c, at: { ...c.at, y: c.at.y + 50 } })),
    }));
    const saying = said({ ...what, edgeLength: length }, longer);
    expect(saying.kind === 'edge' && saying.pins[0]?.at.kind === 'along' ? saying.pins[0].at.far : 0).toBeCloseTo(
      70,
      9,
    );
  });

  it('says how much, on which seam, how far along, fading to where', () => {
    expect(sentence({ kind: 'edge', edge: edges.front, pins: [edge(5, 0.75)], to: inches(9), share: 0.5 })).toBe(
      'front, side (front seam): taken in by 3/4 in at 5 in below the waist, fading to nothing at the waist and at 9 in below the waist; both sides of the body.',
    );
    expect(sentence({ kind: 'edge', edge: edges.back, pins: [edge(7, -0.25), edge(11, -0.375)], share: 1 })).toMatch(
      /^back, edge 4 to gore, edge 2: let out by 3\/8 in at .* below the waist, by 1\/4 in at .*, fading to nothing at the waist and at the hem, all of it from back, edge 4; both/,
    );
    expect(sentence({ kind: 'edge', edge: edges.front, pins: [edge(0, 0.5)], to: inches(7), share: 0.5 })).toBe(
      'front, side (front seam): taken in by 1/2 in at the waist, fading to nothing at 7 in below the waist; both sides of the body.',
    );
  });

  it('says lengths and points, and in centimetres where she measures so', () => {
    const metric: Garment = { ...named, shownIn: 'cm' };
    const ids = [front.id, back.id];
    expect(sentence({ kind: 'length', pieceIds: ids, at: { kind: 'hem' }, by: -25 }, metric)).toBe(
      '2.5 cm shorter at the hem: front, back; both sides of the body.',
    );
    expect(sentence({ kind: 'length', pieceIds: ids, at: { kind: 'depth', depth: inches(7) }, by: inches(1) })).toBe(
      '1 in longer 7 in below the waist: front, back; both sides of the body.',
    );
    const point = {
      kind: 'point',
      pieceId: gore.id,
      cornerId: gore.corners[2]?.id ?? '',
      by: { dx: 0, dy: 0 },
    } as const;
    expect(
      pinnedSentence(named, pinned('p', { ...point, by: { dx: -inches(0.5), dy: inches(0.25) } }, { side: 'left' })),
    ).toBe('gore, corner 3 moved 1/2 in to the left and 1/4 in down; her left side only.');
    expect(sentence({ ...point, cornerId: 'gone' })).toContain('a corner that is gone');
    expect(sentence({ kind: 'edge', edge: { pieceId: 'gone', edgeId: 'x' }, pins: [], share: 1 })).toContain(
      'an edge that is no longer there',
    );
  });
});

describe('what holds back cutting', () => {
  const what = { kind: 'length', pieceIds: [front.id], at: { kind: 'hem' }, by: inches(1) } as const;

  it('is said once for each mock-up, with how many and which, and only of what is still noted', () => {
    const garment = withMockup(named, [
      pinned('p', what),
      pinned('q', what, { state: { kind: 'declined', date: '2026-03-12', reason: 'No' } }),
      pinned('r', { ...what, by: -inches(0.5) }),
    ]);
    const [finding, ...more] = mockupFindings(garment);
    expect(more).toEqual([]);
    expect(finding).toMatchObject({ weight: 'stop', place: { kind: 'mockup', mockupId: 'm1' } });
    expect(finding?.pinned.map(({ id }) => id)).toEqual(['p', 'r']);
    expect(finding && plain(findingSentence(finding, garment))).toBe(
      'First mock-up: 2 pinned changes are neither carried over nor declined. 1 in longer at the hem: front; both sides of the body. 1/2 in shorter at the hem: front; both sides of the body.',
    );
  });

  it('says why not, with the piece or the lengths', () => {
    const refusal = { kind: 'not-carried', pinnedId: 'p' } as const;
    expect(notCarried(named, { ...refusal, why: 'sides-together', pieceIds: [gore.id, back.id] })).toContain(
      'gore and back',
    );
    expect(
      notCarried(named, {
        ...refusal,
        why: 'edge-changed',
        edge: edges.front,
        was: inches(25),
        is: inches(40),
      }),
    ).toMatch(/front, side should be 25 in long .* is 40 in now/);
    expect(notCarried(named, { ...refusal, why: 'crosses', pieceId: gore.id })).toMatch(/^gore: /);
    expect(
      carryNote(named, {
        kind: 'places-scaled',
        pinnedId: 'p',
        edge: edges.front,
        was: inches(25),
        is: inches(26),
      }),
    ).toContain('was 25 in long when this was pinned and is 26 in now');
  });
});

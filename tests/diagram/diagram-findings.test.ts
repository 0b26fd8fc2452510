import { describe, expect, it } from 'vitest';
import { diagramFindings } from '../../core/diagram/diagram-findings';
import { known, sampleDiagram, set } from './sample-diagram';

const kinds = (...args: Parameters<typeof diagramFindings>) =>
  diagramFindings(...args).map((one) => `${one.weight} ${one.kind}`);
const across = known('a', { x: 100, y: 200 }, { x: 1900, y: 200 }, 900);

describe('diagramFindings', () => {
  it('without a known length says so and stops', () => {
    expect(kinds(sampleDiagram(), set)).toEqual(['stop no-known-length']);
  });

  it('with one known length says that nothing checks it', () => {
    expect(kinds(sampleDiagram({ knownLengths: [across] }), set)).toEqual(['warn one-known-length']);
  });

  it('with two the same way says which way is unchecked', () => {
    const second = known('b', { x: 120, y: 700 }, { x: 1720, y: 700 }, 800);
    expect(diagramFindings(sampleDiagram({ knownLengths: [across, second] }), set)).toMatchObject([
      { kind: 'one-direction', direction: 'across' },
    ]);
  });

  it.each([
    [0.006, []],
    [0.03, ['warn known-length-disagrees', 'warn known-length-disagrees']],
    [0.1, ['warn known-length-disagrees', 'warn known-length-disagrees']],
  ])('two lengths that disagree by %d of themselves', (share, expected) => {
    const down = known('b', { x: 100, y: 200 }, { x: 100, y: 2400 }, 1100);
    const second = known('c', { x: 150, y: 1000 }, { x: 1950, y: 1000 }, 900 * (1 + share));
    expect(
      kinds(sampleDiagram({ knownLengths: [across, down, second] }), set).filter((one) => !one.includes('stretched')),
    ).toEqual(expected);
  });

  it('a picture stretched by 3 per cent is named with what that comes to over the picture', () => {
    const down = known('b', { x: 100, y: 200 }, { x: 100, y: 2200 }, 1030);
    const [finding, ...rest] = diagramFindings(sampleDiagram({ knownLengths: [across, down] }), set);
    expect(rest).toEqual([]);
    // 0.515 mm a pixel down against 0.5 across; 2,600 pixels of height.
    expect(finding).toMatchObject({
      kind: 'stretched',
      weight: 'warn',
      share: expect.closeTo(0.03, 9),
      over: expect.closeTo(1339, 6),
      slip: expect.closeTo(1339 * 0.03, 6),
    });
  });

  it('a length of nothing, a line of nothing and a missing measure are each named', () => {
    const place = { x: 500, y: 500 };
    const missing = { kind: 'share', measure: 'bust', parts: 1, of: 2, ease: 0 } as const;
    const diagram = sampleDiagram({
      knownLengths: [
        known('zero', { x: 0, y: 0 }, { x: 800, y: 0 }, 0),
        known('point', place, place, 120),
        { id: 'share', from: { x: 0, y: 90 }, to: { x: 700, y: 90 }, says: missing },
      ],
    });
    expect(kinds(diagram, set)).toEqual([
      'stop known-length-zero',
      'stop known-length-without-line',
      'stop known-length-needs-measure',
      'stop no-known-length',
    ]);
  });

  it('a short reference is named with what a slip of it becomes', () => {
    const short = known('s', { x: 100, y: 100 }, { x: 160, y: 100 }, 76.2);
    const [, finding] = diagramFindings(sampleDiagram({ knownLengths: [short] }), set);
    // 1.5 px at 1.27 mm a pixel, grown from 76.2 mm to the 3,302 mm of the picture's height.
    expect(finding).toMatchObject({ kind: 'short-known-length', grows: expect.closeTo((1.5 * 1.27 * 3302) / 76.2, 6) });
  });
});

import { describe, expect, it } from 'vitest';
import { chosenBy, dragged } from '../../app/draft/drag-effect';
import { grips, type Hit } from '../../app/draft/hit-test';
import { panel } from './panel';

function grip(kind: Hit['kind'], which: (hit: Hit) => boolean = () => true): Hit {
  const found = grips(panel, { leastStretch: 10 }).find((hit) => hit.kind === kind && which(hit));
  if (!found) throw new Error(`no ${kind}`);
  return found;
}

describe('dragged', () => {
  it('gives the very same piece when something is brought to where it was', () => {
    for (const hit of [grip('corner'), grip('through'), grip('handle')])
      expect(dragged(panel, hit, hit.at)).toBe(panel);
  });

  it('moves one corner and leaves everything else the same object', () => {
    const moved = dragged(panel, grip('corner'), { x: -7, y: 11 });
    expect(moved.corners[0]?.at).toEqual({ x: -7, y: 11 });
    expect(moved.corners[1]).toBe(panel.corners[1]);
    expect(moved.edges).toBe(panel.edges);
  });

  it('bends a straight edge by its plus and keeps the order of points on a curved one', () => {
    const bent = dragged(
      panel,
      grip('plus', (hit) => hit.kind === 'plus' && hit.edgeId === 'waist'),
      { x: 103, y: 12 },
    );
    expect(bent.edges[0]?.shape).toMatchObject({ kind: 'curve', through: [{ x: 103, y: 12 }] });
    const second = grip('plus', (hit) => hit.kind === 'plus' && hit.edgeId === 'side' && hit.index === 1);
    const side = dragged(panel, second, { x: 262, y: 320 });
    expect(side.edges[1]?.shape).toMatchObject({
      through: [
        { x: 240, y: 150 },
        { x: 262, y: 320 },
      ],
    });
    expect(chosenBy(panel, second)).toMatchObject({ kind: 'through', edgeId: 'side', index: 1 });
  });

  it('takes marks, curve points and grain along with the whole piece', () => {
    const { at } = grip('handle');
    const moved = dragged(panel, grip('handle'), { x: at.x + 25.4, y: at.y - 50.8 });
    expect(moved.darts[0]?.point.y).toBeCloseTo(39.2, 9);
    expect(moved.grain?.from.x).toBeCloseTo(115.4, 9);
    expect(moved.labels[0]?.at.y).toBeCloseTo(282.2, 9);
  });

  it('slides a notch along its edge and never off it', () => {
    expect(dragged(panel, grip('notch'), { x: 60, y: 401 }).notches[0]?.along).toBeCloseTo(119, 6);
    expect(dragged(panel, grip('notch'), { x: -40, y: -900 }).notches[0]?.along).toBeCloseTo(520, 6);
  });

  it('slides a dart with its point and keeps all of its mouth on the edge', () => {
    const dart = dragged(panel, grip('dart-mouth'), { x: 120, y: 4 }).darts[0];
    expect(dart?.along).toBeCloseTo(120, 6);
    expect(dart?.point.y).toBeCloseTo(90, 6);
    expect(dragged(panel, grip('dart-mouth'), { x: 900, y: 4 }).darts[0]?.along).toBeCloseTo(190, 6);
  });
});

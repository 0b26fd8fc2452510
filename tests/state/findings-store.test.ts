import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { roomOf, useFindings } from '../../app/state/findings-store';
import { useGarment } from '../../app/state/garment-store';
import { beforeYouCut } from '../../core/check/before-you-cut';
import { linden } from '../garment/linden';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  useGarment.getState().close();
  vi.useRealTimers();
});

/** Time goes by, and the checks are there. */
async function pass(ms: number): Promise<void> {
  await vi.advanceTimersByTimeAsync(ms);
  await vi.dynamicImportSettled();
}

it('a garment just opened is looked over at once', async () => {
  useGarment.getState().open(linden());
  await pass(0);
  expect(useFindings.getState().findings).toEqual(beforeYouCut(linden()));
});

it('findings wait until the garment has rested for 150 ms', async () => {
  useGarment.getState().open(linden());
  await pass(0);
  const before = useFindings.getState().findings;
  useGarment.getState().beginDrag('moved');
  for (let i = 0; i < 10; i++) {
    useGarment.getState().drag((garment) => ({ ...garment, name: `name ${i}` }));
    await pass(140);
  }
  expect(useFindings.getState().findings).toBe(before);
  await pass(10);
  expect(useFindings.getState().findings).not.toBe(before);
});

it('each room counts its own findings, and the last room all of them', async () => {
  const garment = linden();
  const pieces = garment.pieces.map(({ grain: _, use: __, ...piece }) => piece);
  useGarment.getState().open({ ...garment, pieces });
  await pass(0);
  const { findings, countByRoom } = useFindings.getState();
  expect(countByRoom.check).toBe(findings.length);
  const inDraft = findings.filter((finding) => roomOf(finding) === 'draft').length;
  expect(inDraft).toBeGreaterThan(0);
  expect(countByRoom.draft).toBe(inDraft);
});

it('nothing is open when nothing is on the table', async () => {
  useGarment.getState().open(linden());
  await pass(0);
  useGarment.getState().close();
  await pass(200);
  expect(useFindings.getState()).toMatchObject({ findings: [], countByRoom: {} });
});

it('what was pinned and is not carried over is settled in the Mock-up room', () => {
  const found = beforeYouCut(linden()).filter(({ kind }) => kind === 'pinned-not-carried');
  expect(found.map((finding) => [roomOf(finding), finding.weight])).toEqual([['mockup', 'stop']]);
});

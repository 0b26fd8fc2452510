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

it('a garment just opened is looked over at once', () => {
  useGarment.getState().open(linden());
  vi.advanceTimersByTime(0);
  expect(useFindings.getState().findings).toEqual(beforeYouCut(linden()));
});

it('findings wait until the garment has rested for 150 ms', () => {
  useGarment.getState().open(linden());
  vi.advanceTimersByTime(0);
  const before = useFindings.getState().findings;
  useGarment.getState().beginDrag('moved');
  for (let i = 0; i < 10; i++) {
    useGarment.getState().drag((garment) => ({ ...garment, name: `name ${i}` }));
    vi.advanceTimersByTime(140);
  }
  expect(useFindings.getState().findings).toBe(before);
  vi.advanceTimersByTime(10);
  expect(useFindings.getState().findings).not.toBe(before);
});

it('each room counts its own findings, and the last room all of them', () => {
  const garment = linden();
  const pieces = garment.pieces.map(({ grain: _, use: __, ...piece }) => piece);
  useGarment.getState().open({ ...garment, pieces });
  vi.advanceTimersByTime(0);
  const { findings, countByRoom } = useFindings.getState();
  expect(countByRoom.check).toBe(findings.length);
  const inDraft = findings.filter((finding) => roomOf(finding) === 'draft').length;
  expect(inDraft).toBeGreaterThan(0);
  expect(countByRoom.draft).toBe(inDraft);
});

it('nothing is open when nothing is on the table', () => {
  useGarment.getState().open(linden());
  vi.advanceTimersByTime(0);
  useGarment.getState().close();
  vi.advanceTimersByTime(200);
  expect(useFindings.getState()).toMatchObject({ findings: [], countByRoom: {} });
});

it('what was pinned and is not carried over is settled in the Mock-up room', () => {
  const found = beforeYouCut(linden()).filter(({ kind }) => kind === 'pinned-not-carried');
  expect(found.map((finding) => [roomOf(finding), finding.weight])).toEqual([['mockup', 'stop']]);
});

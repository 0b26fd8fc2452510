import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, type Page } from '@playwright/test';
import { preview } from 'vite';
import { beforeYouCut } from '../../core/check/before-you-cut';
import { seededRandom } from '../../core/cloth/seeded-random';
import { currentSet } from '../../core/garment/measure-value';
import { photoIdsOf } from '../../core/garment/photo-ids';
import { readGarment } from '../../core/garment/schema';
import { writeLength } from '../../core/units/write-length';
import { type Done, editOnAndOn } from './editing-script';
import { onDevice } from './kept-rows';
import { type KillableBrowser, openKillable } from './killable-browser';

/** What a person may lose at the most. */
const ALLOWED_MS = 1000;
/** The browser dies at some moment within this time of the first change. */
const LIFE_MS = 5000;

/** What came of killing the browser so many times. */
export interface KillFigures {
  readonly kills: number;
  /** Things done on the screen in all. */
  readonly done: number;
  /** Those of them that were not there after the next start. */
  readonly lost: number;
  /** How long the oldest of them had stood on the screen when the browser died. */
  readonly oldestLossMs: number;
  /** Kills that came before the last change was on the device, so that a write may have been cut in the middle. */
  readonly midWrite: number;
}

/** Kills the browser so many times and writes what came of it; whether nothing older than a second was ever lost. */
export async function killTrial(times: number, seed: number): Promise<boolean> {
  const server = await preview({
    logLevel: 'error',
    preview: { host: '127.0.0.1', port: Number(process.env.PORT ?? 4188) },
  });
  try {
    const figures = await killAgainAndAgain(server.resolvedUrls?.local[0] ?? '', times, seed, (sentence) =>
      console.log(sentence),
    );
    console.log(JSON.stringify({ seed, ...figures }));
    return figures.oldestLossMs <= ALLOWED_MS;
  } finally {
    await server.close();
  }
}

/** Throws when a garment cannot be opened, or what it holds is not what was on the screen. */
export async function killAgainAndAgain(
  address: string,
  times: number,
  seed: number,
  tell: (sentence: string) => void = () => undefined,
): Promise<KillFigures> {
  const random = seededRandom(seed);
  const profile = await mkdtemp(join(tmpdir(), 'inchsquare-kill-'));
  let figures: KillFigures = { kills: 0, done: 0, lost: 0, oldestLossMs: 0, midWrite: 0 };
  let browser: KillableBrowser | undefined;
  try {
    let before: { readonly seq: number; readonly done: readonly Done[]; readonly killedAt: number } | undefined;
    while (figures.kills < times || before) {
      browser = await openKillable(profile);
      const { page } = browser;
      await page.goto(address);
      if (figures.kills === 0) await page.getByRole('button', { name: /Try the demo garment/ }).click();
      await page.getByRole('navigation').waitFor();
      // A new window is at work at once: what opening writes is written before anything is counted.
      await expect(page.getByText('Kept on this device')).toBeVisible({ timeout: 30_000 });
      const seq = await lookOver(page, before?.done ?? [], before?.seq);
      if (before) figures = counted(figures, before, seq);
      before = undefined;
      if (figures.kills < times) {
        const done: Done[] = [];
        const life = random() * LIFE_MS;
        const editing = editOnAndOn(page, random, done).catch((fault) => fault);
        await new Promise((over) => setTimeout(over, life));
        const killedAt = Date.now();
        await browser.kill();
        const fault = await editing;
        if (!/closed|crashed|disconnected/i.test(String(fault))) throw fault;
        before = { seq, done: done.filter(({ at }) => at <= killedAt), killedAt };
        figures = { ...figures, kills: figures.kills + 1 };
        if (figures.kills % 10 === 0) tell(`${figures.kills} kills: ${JSON.stringify(figures)}`);
      } else await browser.kill();
      browser = undefined;
    }
    return figures;
  } finally {
    await browser?.kill();
    await rm(profile, { recursive: true, force: true });
  }
}

/** That the garment on the device is whole, passes its checks and is what was on the screen; the number of its last entry. */
async function lookOver(page: Page, done: readonly Done[], since: number | undefined): Promise<number> {
  const { opened, lastSeq, photos } = await onDevice(page);
  expect(readGarment(opened.garment).kind).toBe('garment');
  beforeYouCut(opened.garment);
  for (const id of photoIdsOf(opened.garment)) expect(photos.get(id), `the picture ${id}`).toBeGreaterThan(0);
  if (since !== undefined) {
    const waist = done[lastSeq - since - 1]?.waist;
    const measure = currentSet(opened.garment).measures.waist;
    if (waist !== undefined && measure) {
      expect(writeLength(measure.length, { shownIn: 'in', spaces: 'typed' })).toBe(waist);
    }
  }
  return lastSeq;
}

function counted(
  figures: KillFigures,
  { seq, done, killedAt }: { readonly seq: number; readonly done: readonly Done[]; readonly killedAt: number },
  now: number,
): KillFigures {
  const survived = now - seq;
  // One may have been on its way that nobody saw on the screen yet.
  if (survived < 0 || survived > done.length + 1) {
    throw new Error(`${survived} entries for ${done.length} changes: ${JSON.stringify(done)}`);
  }
  const lost = done.slice(survived);
  const oldest = Math.max(0, ...lost.map(({ at }) => killedAt - at));
  return {
    ...figures,
    done: figures.done + done.length,
    lost: figures.lost + lost.length,
    oldestLossMs: Math.max(figures.oldestLossMs, oldest),
    midWrite: figures.midWrite + (lost.length > 0 || survived > done.length ? 1 : 0),
  };
}

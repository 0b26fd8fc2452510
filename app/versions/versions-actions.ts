import { broughtBack } from '../../core/garment/bring-back';
import { addCutting, removeCutting } from '../../core/garment/cutting';
import type { Cutting } from '../../core/garment/done-to-it';
import type { Garment } from '../../core/garment/garment';
import { type VersionHead, versionNow } from '../../core/garment/version';
import { useGarment } from '../state/garment-store';
import { newId } from '../state/new-id';
import { today } from '../state/today';
import { useVersions } from '../state/versions-store';
import { readVersionsAgain } from '../storage/use-versions';
import { describeVersion, keepVersion } from '../storage/versions';
import { say } from '../ui/say';
import { versionsWords as words } from '../words/versions';

/** Keeps the draft on the table as its next version; whether that went well. */
export async function keepNow(said: Pick<VersionHead, 'name' | 'note'>): Promise<VersionHead | undefined> {
  const { garment } = useGarment.getState();
  if (!garment) return undefined;
  try {
    const version = await keepVersion(garment, { ...said, made: today() });
    await readVersionsAgain(garment.id);
    say(words.kept(version));
    return version;
  } catch {
    say(words.notKept);
    return undefined;
  }
}

/** Gives a version another name or note. */
export async function setSaid(
  garmentId: string,
  number: number,
  said: Partial<Pick<VersionHead, 'name' | 'note'>>,
): Promise<void> {
  await describeVersion(garmentId, number, said).catch(() => say(words.notKept));
  await readVersionsAgain(garmentId);
}

/** Makes the draft as it was in a version, in one step; what there is now is first kept as a version where it is none. */
export async function bringBack(number: number, version: Garment): Promise<void> {
  const { garment } = useGarment.getState();
  if (!garment) return;
  const { versions } = useVersions.getState();
  const isKept = versionNow(versions, garment) !== undefined;
  const first = isKept ? undefined : await keepNow({ name: words.keptBefore(number), note: '' });
  if (!isKept && !first) return;
  if (useGarment.getState().garment !== garment) {
    say(words.changedMeanwhile);
    return;
  }
  const newest = Math.max(number, first?.number ?? 0, ...versions.map((one) => one.number));
  useGarment.getState().edit(words.bringBackLabel(number), (now) => broughtBack(now, version, { number, newest }));
  say(first ? words.keptFirst(first.number, number) : words.broughtBack(number));
}

/** Notes that something was cut from a version. */
export function noteCut(version: Garment, number: number, { from, date }: Pick<Cutting, 'from' | 'date'>): void {
  const cut = { id: newId(), date, version: number, from, of: version };
  useGarment.getState().edit(words.cutLabel(number), (garment) => addCutting(garment, cut));
}

/** Takes a note of something cut back out. */
export function forgetCut(id: string): void {
  useGarment.getState().edit(words.forgetLabel, (garment) => removeCutting(garment, id));
}

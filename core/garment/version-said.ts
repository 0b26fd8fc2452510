import type { Garment } from './garment';
import { type VersionHead, versionNow } from './version';
import { versionMark } from './version-mark';

/** How a page, a file or a card tells which version it is of. */
export type VersionSaid =
  /** Exactly a version that is kept. */
  | { readonly kind: 'kept'; readonly number: number; readonly name: string; readonly mark: string }
  /** Something that is not kept as a version; `since` the version it came from, where there is any. */
  | { readonly kind: 'changed'; readonly mark: string; readonly since?: number };

/** Which version the garment is, by its pieces; or from which it has been changed. */
export function versionSaid(versions: readonly VersionHead[], garment: Garment): VersionSaid {
  const mark = versionMark(garment);
  const now = versionNow(versions, garment);
  if (now) return { kind: 'kept', number: now.number, name: now.name, mark };
  const since = versionBefore(versions, garment);
  return since === undefined ? { kind: 'changed', mark } : { kind: 'changed', mark, since };
}

/** The version the draft was last kept as or brought back from. */
function versionBefore(versions: readonly VersionHead[], { drawnFrom }: Garment): number | undefined {
  if (versions.length === 0) return undefined;
  const newest = Math.max(...versions.map(({ number }) => number));
  const isThere = versions.some(({ number }) => number === drawnFrom?.version);
  return drawnFrom && isThere && newest <= drawnFrom.newest ? drawnFrom.version : newest;
}

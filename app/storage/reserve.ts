import { useKept } from '../state/kept-store';

/**
 * Room held back on the device, to be given up on the day it is full: thousands of changes go into it. Browsers tell a
 * page a round figure of what it may keep, not what the disk has, so a device that is nearly full shows in nothing else.
 */
const RESERVE_BYTES = 8 * 1024 * 1024;

const NAME = 'inchsquare-reserve';
const ENTRY = './reserve';

/** The page begins with what she came for; the reserve can wait. */
const LAY_AFTER_MS = 5000;

let timer: ReturnType<typeof setTimeout> | undefined;

/** Sees to it, a little later, that there is a reserve. Where there is no room for one, that is known from then on. */
export function layReserve(): void {
  if (timer === undefined) timer = setTimeout(() => void lay(), LAY_AFTER_MS);
}

/** Gives the reserve up. Whether there was one. */
export async function spendReserve(): Promise<boolean> {
  try {
    const cache = await caches.open(NAME);
    const wasThere = await cache.delete(ENTRY);
    useKept.setState({ reserve: 'spent' });
    return wasThere;
  } catch {
    return false;
  }
}

async function lay(): Promise<void> {
  timer = undefined;
  // A browser without such a store, or in which it is forbidden, goes without a reserve.
  const cache = await globalThis.caches?.open(NAME).catch(() => undefined);
  if (!cache) return;
  try {
    // Looked for each time: another window may have spent it, or the browser cleared it away.
    if (!(await cache.match(ENTRY))) await cache.put(ENTRY, new Response(new Uint8Array(RESERVE_BYTES)));
    useKept.setState({ reserve: 'laid' });
  } catch {
    useKept.setState({ reserve: 'spent' });
  }
}

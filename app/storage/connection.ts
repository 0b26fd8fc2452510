import { useKept } from '../state/kept-store';
import { database, STORE_VERSION } from './database';

/** What browsers call a connection to the store that is gone, as after a while in the background on a telephone. */
const LOST = new Set(['DatabaseClosedError', 'UnknownError', 'InvalidStateError']);

/** A newer program has taken the store over; this one must not write into what it made of it. */
export class Outdated extends Error {}

/** An older program, open in another window, holds the store in its old shape and does not let go. */
export class Blocked extends Error {}

let isOutdated = false;
database.on('versionchange', ({ newVersion }) => {
  isOutdated ||= newVersion !== null;
});

/** Whoever waits for the store to open. */
const waiting = new Set<() => void>();

database.on('blocked', () => {
  useKept.setState({ blocked: true });
  for (const tell of waiting) tell();
});

database.on(
  'ready',
  () => {
    const made = database.backendDB().version;
    useKept.setState({ blocked: false, storeIsNewer: made > STORE_VERSION * 10 });
  },
  true,
);

// What a newer program made of the store can be read, and is never written into: it may hold what this one does not know.
database.use({
  stack: 'dbcore',
  name: 'never into a newer store',
  create: (core) => ({
    ...core,
    table: (name) => {
      const table = core.table(name);
      return {
        ...table,
        mutate: (request) => (useKept.getState().storeIsNewer ? Promise.reject(new Outdated()) : table.mutate(request)),
      };
    },
  }),
});

/** Does something with the store. When the connection turns out to be lost it is opened anew, and the work done again once. */
export async function connected<Answer>(work: () => Promise<Answer>): Promise<Answer> {
  if (isOutdated) throw new Outdated();
  await opened();
  try {
    return await work();
  } catch (fault) {
    if (!faultNames(fault).some((name) => LOST.has(name))) throw fault;
    database.close({ disableAutoOpen: false });
    return await work();
  }
}

/** Resolves when the store is open; throws Blocked as soon as it is known that another window holds it. */
async function opened(): Promise<void> {
  if (database.isOpen()) return;
  if (useKept.getState().blocked) throw new Blocked();
  let tell = () => {};
  const blocked = new Promise<never>((_, failed) => {
    tell = () => failed(new Blocked());
    waiting.add(tell);
  });
  await Promise.race([database.open(), blocked]).finally(() => waiting.delete(tell));
}

/** The names of a fault and of what caused it: a full device is only named by the cause. */
export function faultNames(fault: unknown): readonly string[] {
  const { name, inner } = fault as { readonly name?: string; readonly inner?: { readonly name?: string } };
  return [name, inner?.name].filter((each) => each !== undefined);
}

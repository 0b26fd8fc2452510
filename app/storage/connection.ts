import { database } from './database';

/** What browsers call a connection to the store that is gone, as after a while in the background on a telephone. */
const LOST = new Set(['DatabaseClosedError', 'UnknownError', 'InvalidStateError']);

/** A newer program has taken the store over; this one must not write into what it made of it. */
export class Outdated extends Error {}

let isOutdated = false;
database.on('versionchange', ({ newVersion }) => {
  isOutdated ||= newVersion !== null;
});

/** Does something with the store. When the connection turns out to be lost it is opened anew, and the work done again once. */
export async function connected<Answer>(work: () => Promise<Answer>): Promise<Answer> {
  if (isOutdated) throw new Outdated();
  try {
    return await work();
  } catch (fault) {
    if (!faultNames(fault).some((name) => LOST.has(name))) throw fault;
    database.close({ disableAutoOpen: false });
    return await work();
  }
}

/** The names of a fault and of what caused it: a full device is only named by the cause. */
export function faultNames(fault: unknown): readonly string[] {
  const { name, inner } = fault as { readonly name?: string; readonly inner?: { readonly name?: string } };
  return [name, inner?.name].filter((each) => each !== undefined);
}

import { newFindings } from '../garment/finding';
import type { Finding } from './before-you-cut';

/** What a change of the garment would bring up, and what it would settle. */
export interface NewlyFound {
  readonly appears: readonly Finding[];
  readonly settled: readonly Finding[];
}

/**
 * What is open after a change and was not before, or has become graver, and the other way round. With a panel missing
 * little else can be looked at, so what is no longer said then is not settled.
 */
export function newlyFound(before: readonly Finding[], after: readonly Finding[]): NewlyFound {
  const appears = newFindings(before, after);
  const isBlind = appears.some(({ kind }) => kind === 'panel-missing');
  return { appears, settled: isBlind ? [] : newFindings(after, before) };
}

import { newFindings } from '../garment/finding';
import type { Finding } from './before-you-cut';

/** What a change of the garment would bring up, and what it would settle. */
export interface NewlyFound {
  readonly appears: readonly Finding[];
  readonly settled: readonly Finding[];
}

/** What is open after a change and was not before, or has become graver, and the other way round. */
export function newlyFound(before: readonly Finding[], after: readonly Finding[]): NewlyFound {
  return { appears: newFindings(before, after), settled: newFindings(after, before) };
}

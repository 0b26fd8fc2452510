import { SEWING_TOLERANCE } from '../fit/fit-findings';
import type { Garment, LeftKnowingly } from '../garment/garment';
import { DEGREE } from '../units/degree';
import type { Finding } from './before-you-cut';

/** A finding that is left as it is, with the date and the reason. */
export interface LeftFinding {
  readonly finding: Finding;
  readonly left: LeftKnowingly;
}

/** Findings that hold back cutting and are nevertheless a matter of choice. A straight waist was the fashion at times. */
const CHOICES: readonly Finding['kind'][] = ['straight-waist'];

/** As much as is stored of a finding's key. */
const LONGEST_KEY = 10_000;

/** Whether a finding can be left as it is: any that only warns, and of the others those that are a choice. */
export function mayBeLeft(finding: Finding): boolean {
  return (finding.weight === 'warn' || CHOICES.includes(finding.kind)) && findingKey(finding).length <= LONGEST_KEY;
}

/**
 * What is stored of a finding that is left: its kind, weight, place and words, and its numbers to a thousandth. It is
 * taken for the same finding while all but the numbers is the same and each number within {@link material} of what it was.
 */
export function findingKey(finding: Finding): string {
  const { kind, words, figures } = partsOf(finding);
  return JSON.stringify([kind, words, figures]);
}

/** What is open in a garment, and what of it is left knowingly: every finding is in one of the two lists. */
export function partKnowingly(
  garment: Garment,
  findings: readonly Finding[],
): { readonly open: readonly Finding[]; readonly left: readonly LeftFinding[] } {
  const open: Finding[] = [];
  const left: LeftFinding[] = [];
  for (const finding of findings) {
    const known = mayBeLeft(finding) && garment.knowingly?.find((one) => isStill(one, finding));
    if (known) left.push({ finding, left: known });
    else open.push(finding);
  }
  return { open, left };
}

function isStill({ finding: stored }: LeftKnowingly, finding: Finding): boolean {
  const had = readKey(stored);
  const { kind, words, figures } = partsOf(finding);
  if (!had || had.kind !== kind || had.words !== words) return false;
  const names = Object.keys(figures);
  if (names.length !== Object.keys(had.figures).length) return false;
  return names.every((name) => {
    const was = had.figures[name];
    // Keys are written to a thousandth, which must not push a number over the edge.
    return typeof was === 'number' && Math.abs(was - (figures[name] ?? 0)) <= material(kind, name) + 1e-3;
  });
}

/**
 * How far a number may move before the finding is another: a sixteenth of an inch for lengths, as seams are sewn; half a
 * hundredth for shares; a degree for angles; not at all for counts.
 */
function material(kind: string, name: string): number {
  if (name === 'share') return 0.005;
  if (kind === 'waist-peak') return DEGREE;
  if (kind === 'seam-notches-off' && name !== 'most') return 0;
  return ['edges', 'parts', 'count'].includes(name) ? 0 : SEWING_TOLERANCE;
}

interface Parts {
  readonly kind: string;
  readonly words: string;
  readonly figures: Readonly<Record<string, number>>;
}

function partsOf(finding: Finding): Parts {
  const figures: Record<string, number> = {};
  const words: [string, unknown][] = [];
  for (const [name, value] of Object.entries(finding).sort(([a], [b]) => (a < b ? -1 : 1))) {
    if (typeof value === 'number') figures[name] = Math.round(value * 1000) / 1000;
    // A point of the table moves whenever the piece is moved, and says nothing of the finding.
    else if (name !== 'kind' && !(name === 'at' && typeof value === 'object')) words.push([name, value]);
  }
  return { kind: finding.kind, words: JSON.stringify(words), figures };
}

/** A stored key, or nothing where a file holds something else in its place. */
function readKey(stored: string): { kind: unknown; words: unknown; figures: Record<string, unknown> } | undefined {
  try {
    const value: unknown = JSON.parse(stored);
    if (!Array.isArray(value)) return undefined;
    const [kind, words, figures] = value as unknown[];
    if (typeof figures !== 'object' || figures === null) return undefined;
    return { kind, words, figures: figures as Record<string, unknown> };
  } catch {
    return undefined;
  }
}

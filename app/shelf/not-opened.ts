import type { Opened } from '../storage/open-garment';
import { shelfWords as words } from '../words/shelf';

/** Why a garment could not be taken up from the shelf. */
export function notOpened(why: Exclude<Opened, { readonly garment: unknown }>['kind']): string {
  return { missing: words.missing, newer: words.newer, 'not-a-garment': words.damaged }[why];
}

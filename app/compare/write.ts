import type { ShownIn } from '../../core/units/inch';
import { finestStep } from '../../core/units/write-length';
import { writeLength } from '../words/written';

/** A length to a thirty-second of an inch or a tenth of a millimetre: differences are small. */
export function finely(mm: number, shownIn: ShownIn): string {
  return writeLength(mm, { shownIn, step: finestStep(shownIn) });
}

import { useGarment } from '../../app/state/garment-store';
import { seededRandom } from '../../core/cloth/seeded-random';
import type { Garment } from '../../core/garment/garment';
import { readGarment } from '../../core/garment/schema';
import type { PaperFonts } from '../../core/paper/pdf-document';
import { type Doing, EDITS, spoiltSequence } from './edit-sequence';
import { type FuzzFigures, noteTimes, type Slowest } from './fuzz-files';
import { heldMb } from './held-heap';
import { plainFault } from './plain-fault';
import { type Longest, timed, workThrough } from './worked-through';

/** Edits done, and what came of them. */
export interface EditFigures extends Omit<FuzzFigures, 'accepted'> {
  readonly edits: number;
  /** Edits after which the garment was another one. */
  readonly taken: number;
  /** Edits that would have made a garment that cannot be read again, and were not taken. */
  readonly refused: number;
}

/** Does so many spoilt sequences of edits through the garment's own store, and works through what comes of each. */
export async function fuzzEdits(
  garments: readonly Garment[],
  fonts: PaperFonts,
  { from, count, tell }: { readonly from: number; readonly count: number; readonly tell?: (sentence: string) => void },
): Promise<EditFigures> {
  const longest: Slowest = {};
  const faults: string[] = [];
  const sums = { edits: 0, taken: 0, refused: 0 };
  let told = 0;
  for (let seed = from; seed < from + count; seed++) {
    const random = seededRandom(seed);
    const here: Longest = {};
    try {
      const garment = garments[Math.floor(random() * garments.length)] as Garment;
      useGarment.getState().open(garment);
      let ids = 0;
      for (const doing of spoiltSequence(garment, random)) {
        const outcome = done(doing, () => `new-${++ids}`, here);
        sums.edits += 1;
        if (outcome !== 'nothing') sums[outcome] += 1;
      }
      const after = useGarment.getState().garment;
      if (after) await workThrough(after, fonts, here);
    } catch (fault) {
      faults.push(`${seed}: ${fault instanceof Error ? fault.message : String(fault)}`);
    }
    noteTimes(seed, here, longest, faults);
    for (; told < faults.length; told++) tell?.(faults[told] as string);
    if ((seed + 1 - from) % 500 === 0)
      tell?.(
        `${seed + 1 - from} sequences, ${sums.edits} edits, ${sums.taken} taken, ${faults.length} faults, ${heldMb()} MB held`,
      );
  }
  useGarment.getState().close();
  return { tried: count, ...sums, faults, longest };
}

/** Does one thing. Throws when the edit does, and when the garment on the table is then not sound. */
function done(doing: Doing, newId: () => string, here: Longest): 'taken' | 'refused' | 'nothing' {
  const store = useGarment.getState();
  const { garment: before, refused } = store;
  timed(here, doing.kind === 'edit' ? doing.name : doing.kind, () => {
    if (doing.kind !== 'edit') store[doing.kind]();
    else store.edit(doing.name, (garment) => EDITS[doing.name]?.made(garment, doing.told, newId) ?? garment);
  });
  const now = useGarment.getState();
  if (now.garment === before) return now.refused === refused ? 'nothing' : 'refused';
  const reading = readGarment(JSON.parse(JSON.stringify(now.garment)));
  const fault = reading.kind === 'garment' ? plainFault(reading.garment) : JSON.stringify(reading);
  if (fault) throw new Error(`${JSON.stringify(doing)} was taken although ${fault}`);
  return 'taken';
}

import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';

setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc') as () => void;

/** What the heap of this process holds with everything collected that nobody holds (MB, to a tenth). */
export function heldMb(): number {
  collect();
  collect();
  return Math.round(process.memoryUsage().heapUsed / 1e5) / 10;
}

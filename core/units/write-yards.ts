import { MM_PER_METRE, MM_PER_YARD } from './inch';

/** Eighths of a yard, the least a draper cuts. */
const EIGHTHS = 8;

/** A length in yards to the nearest eighth, as cloth is bought: `2 1/2 yd`, `7/8 yd`. It is never broken over two lines. */
export function writeYards(length: number): string {
  const eighths = Math.round((length / MM_PER_YARD) * EIGHTHS);
  const whole = Math.floor(eighths / EIGHTHS);
  let [over, under] = [eighths % EIGHTHS, EIGHTHS];
  while (over > 0 && over % 2 === 0) [over, under] = [over / 2, under / 2];
  const parts = [whole > 0 || over === 0 ? String(whole) : '', over > 0 ? `${over}/${under}` : '', 'yd'];
  return parts.filter((part) => part !== '').join('\u00a0');
}

/** A length in metres to the hundredth: `2.35 m`, or `2,35 m` where the sign is a comma. */
export function writeMetres(length: number, decimal: '.' | ',' = '.'): string {
  return `${(length / MM_PER_METRE).toFixed(2).replace('.', decimal)}\u00a0m`;
}

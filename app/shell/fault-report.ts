/** What a report says of a fault. */
interface Reported {
  readonly where: string;
  readonly fault: unknown;
  /** In her own words; left out when she says nothing. */
  readonly said: string;
  readonly browser: string;
  readonly when: Date;
}

/**
 * A fault as text to be read and passed on. Of the garment nothing is in it: whatever stands in quotation marks in the
 * fault's own sentence, and every figure of it, is struck out, for it may be a name or a measure.
 */
export function faultReport({ where, fault, said, browser, when }: Reported): string {
  const { name, message, stack } = fault instanceof Error ? fault : new Error(String(fault));
  const places = (stack ?? '').split('\n').filter((line) => /^\s+at |@.*:\d+:\d+$/.test(line));
  return [
    `Inchsquare: a fault in ${where}`,
    when.toISOString(),
    browser,
    `${name}: ${struckOut(message)}`,
    ...places.slice(0, 20).map((line) => line.trim()),
    ...(said.trim() === '' ? [] : ['', said.trim()]),
    '',
  ].join('\n');
}

function struckOut(message: string): string {
  return message
    .replace(/"[^"]*"|'[^']*'|`[^`]*`|“[^”]*”/g, '…')
    .replace(/\S*\d\S*/g, '#')
    .slice(0, 500);
}

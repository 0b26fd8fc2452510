/** Words of the table: the canvas that the diagram and draft rooms share. */
export const tableWords = {
  nearer: 'Nearer',
  farther: 'Farther',
  fit: 'Show everything',
  hand: 'Move the table: every press slides it and nothing else',
  fingersMove: 'Pen draws, fingers move the table',
  fingersDraw: 'Fingers draw as well',
  lineNumber: (number: number) => (number < 0 ? `−${-number}` : String(number)),
  less: (number: string) => `−${number}`,
} as const;

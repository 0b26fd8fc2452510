import type { ToLay } from './lay-task';

/** A straight strip to be cut with the rest: a band, a placket, a facing, binding. */
export interface Strip {
  readonly id: string;
  readonly length: number;
  readonly width: number;
  /** How many there must be. */
  readonly count: number;
  /** Along the selvedge (as strips are torn), from selvedge to selvedge, or on the true bias. */
  readonly cut: 'along' | 'across' | 'bias';
}

/** A strip as a piece to be laid, on cloth of one or two layers; its allowances are already in its length and width. */
export function stripToLay({ id, length, width, count, cut }: Strip, layers: 1 | 2): ToLay {
  const outline = [
    { x: 0, y: 0 },
    { x: length, y: 0 },
    { x: length, y: width },
    { x: 0, y: width },
  ];
  const turns = cut === 'along' ? [0] : cut === 'across' ? [Math.PI / 2] : [Math.PI / 4, -Math.PI / 4];
  return { id, outline, count: Math.ceil(count / layers), stances: turns.map((turn) => ({ turn })) };
}

import type { Level } from '../../../core/garment/garment';
import type { Cut, Edge, Piece } from '../../../core/garment/piece';
import { draftWords } from './draft';
import { fitWords } from './fit';

/** Words of every change that is tried before it is taken, in whatever room. */
export const trialWords = {
  take: 'Take it',
  leave: 'Leave it as it was',
  taken: (label: string) => `Done: ${label}. Undo takes it back.`,
  checks: 'All checks, after this change',
  nothingNew: 'Nothing new would be open after this.',
  wouldBe: (sentence: string) => `After this: ${sentence}`,
  wouldSettle: (sentence: string) => `This settles: ${sentence}`,
  fromTo: (was: string, is: string) => `${was} → ${is}`,
  round: (level: Level) => `Round the ${(level.name ?? fitWords.girth[level.girth]).toLowerCase()}`,
  edgeOf: ({ name, edges }: Piece, edge: Pick<Edge, 'id' | 'name'>) =>
    `${name || 'A piece'}: ${draftWords.edgeOr(edge.name, edges.findIndex(({ id }) => id === edge.id) + 1)}`,
  newPiece: (name: string) => `New piece: ${name}`,
  cut: (cut: Cut) => draftWords.cutWords(cut.count, cut.how),
} as const;

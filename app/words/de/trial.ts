import type { Level } from '../../../core/garment/garment';
import type { Cut, Edge, Piece } from '../../../core/garment/piece';
import type * as english from '../en/trial';
import type { Said } from '../said';
import { draftWords } from './draft';
import { fitWords } from './fit';

export const trialWords: Said<typeof english.trialWords> = {
  take: 'Übernehmen',
  leave: 'Lassen, wie es war',
  taken: (label) => `Fertig: ${label}. „Rückgängig“ nimmt es zurück.`,
  checks: 'Alle Prüfungen nach dieser Änderung',
  nothingNew: 'Danach wäre nichts Neues offen.',
  wouldBe: (sentence) => `Danach: ${sentence}`,
  wouldSettle: (sentence) => `Das klärt: ${sentence}`,
  fromTo: (was, is) => `${was} → ${is}`,
  round: (level: Level) => `Ringsum: ${level.name ?? fitWords.girth[level.girth]}`,
  edgeOf: ({ name, edges }: Piece, edge: Pick<Edge, 'id' | 'name'>) =>
    `${name || 'Ein Teil'}: ${draftWords.edgeOr(edge.name, edges.findIndex(({ id }) => id === edge.id) + 1)}`,
  newPiece: (name) => `Neues Schnittteil: ${name}`,
  cut: (cut: Cut) => draftWords.cutWords(cut.count, cut.how),
};

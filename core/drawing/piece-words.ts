/** What is written on a piece, and where. */
import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { pathLength } from '../geometry/path';
import { angleOf, between, move, vectorBetween } from '../geometry/point';
import type { Path } from '../geometry/segment';
import { allowanceOf } from '../seams/allowance-strips';
import type { CutLineSoFar, NoAllowanceSaid } from '../seams/cut-line';
import { arrow } from './arrows';
import type { AllowanceState, Mark, Words } from './drawing';
import { EDGE_SIZE, insideEdge, readable } from './edge-words';
import { MM_PER_PT } from './line-styles';
import { hasMirrorAxis } from './mirror-axis';
import { pieceMiddle } from './piece-middle';

/** The name is large enough to read across a table, 24 pt, on small pieces down to 18 pt; other words are 12 pt. */
const NAME_SIZE = 24 * MM_PER_PT;
const SMALLEST_NAME = 18 * MM_PER_PT;
const SIZE = 12 * MM_PER_PT;

/** From the middle of one line of words to the next, in sizes. */
const LEADING = 1.3;

/** The arrow that shows which way is up stands over the name, so many sizes long, and its word so many to the right. */
const ARROW = 3;
const UP_BESIDE = 1.4;

type Row = Pick<Words, 'role' | 'content' | 'size' | 'weight'>;

/**
 * In the roomiest place of the piece: its name, how it is cut, what is allowed and, where it matters, that the right side
 * lies up; above them an arrow that points up.
 */
export function bodyWords(piece: Piece, cut: CutLineSoFar | NoAllowanceSaid): Mark[] {
  const { at, room } = pieceMiddle(piece);
  const nameSize = Math.max(SMALLEST_NAME, Math.min(NAME_SIZE, room / 3));
  const rows: Row[] = [
    { role: 'name', content: { kind: 'piece-name', name: piece.name }, size: nameSize, weight: 'bold' },
    { role: 'cut-count', content: { kind: 'cut', ...piece.cut }, size: SIZE, weight: 'plain' },
    { role: 'note', content: { kind: 'allowance', widths: allowanceState(piece, cut) }, size: SIZE, weight: 'bold' },
  ];
  if (piece.cut.how === 'single' && !hasMirrorAxis(piece)) {
    rows.push({ role: 'note', content: { kind: 'right-side-up' }, size: SIZE, weight: 'bold' });
  }
  const height = rows.reduce((sum, { size }) => sum + size * LEADING, 0);
  let y = at.y - height / 2;
  const words = rows.map((row): Words => {
    y += row.size * LEADING;
    return { kind: 'words', ...row, angle: 0, at: { x: at.x, y: y - (row.size * LEADING) / 2 } };
  });
  const foot = { x: at.x, y: at.y - height / 2 };
  const up: Words = {
    kind: 'words',
    role: 'edge',
    content: { kind: 'upright' },
    size: SIZE,
    weight: 'plain',
    angle: 0,
    at: { x: foot.x + UP_BESIDE * SIZE, y: foot.y - (ARROW * SIZE) / 2 },
  };
  return [...words, up, ...arrow('upright', foot, { x: foot.x, y: foot.y - ARROW * SIZE }, 'one')];
}

/**
 * What is allowed, for words that go on every sheet. Widths that cannot be drawn, because the outline crosses itself or
 * there is no room for them, are as good as not said: such a piece is not to be cut. Nor
 * is one of which nobody knows whether its outline has allowances in it.
 */
function allowanceState(piece: Piece, cut: CutLineSoFar | NoAllowanceSaid): AllowanceState {
  if (cut.kind === 'crossed-outline' || cut.kind === 'allowance-does-not-fit') return 'not-said';
  if (piece.drawnAs === 'included') return 'in-drawing';
  if (piece.drawnAs === 'not-known') return 'not-said';
  const widths = piece.edges.flatMap((edge) => (edge.role === 'fold' ? [] : [allowanceOf(edge)]));
  if (widths.every((width) => (width ?? 0) === 0)) return 'none';
  if (cut.kind === 'no-allowance-said') return 'not-said';
  return [...new Set(widths.map((width) => width ?? 0))].sort((a, b) => a - b);
}

/** Words on folds, on the grain line and at her labels. */
export function placedWords(piece: Piece): Words[] {
  const paths = outlineOf(piece).edges;
  const folds = piece.edges.flatMap(({ role }, index): Words[] => {
    const path = paths[index] as Path;
    const place = insideEdge(piece, path, pathLength(path), 0);
    return role === 'fold'
      ? [{ kind: 'words', role: 'edge', content: { kind: 'fold' }, weight: 'plain', ...place }]
      : [];
  });
  const labels = piece.labels
    .filter(({ text }) => text.trim() !== '')
    .map(({ at, text }): Words => {
      return {
        kind: 'words',
        role: 'note',
        at,
        content: { kind: 'label', text },
        size: SIZE,
        angle: 0,
        weight: 'plain',
      };
    });
  return [...folds, ...grainWords(piece), ...labels];
}

function grainWords({ grain }: Piece): Words[] {
  if (!grain) return [];
  const angle = readable(angleOf(vectorBetween(grain.from, grain.to)));
  const beside = { dx: Math.sin(angle), dy: -Math.cos(angle) };
  const at = move(between(grain.from, grain.to, 0.5), beside, EDGE_SIZE);
  return [{ kind: 'words', role: 'grain', at, content: { kind: 'grain' }, size: EDGE_SIZE, angle, weight: 'plain' }];
}

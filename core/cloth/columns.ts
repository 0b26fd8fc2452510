/**
 * A lay that stands at once: the boxes round the pieces in columns across the cloth, beyond everything that is fixed. It
 * wastes cloth, but it is a lay, whatever the shapes.
 */
import type { LayField } from './lay-field';
import { firstOnRepeat, goesAcross } from './lay-room';
import type { LayShape } from './lay-table';

/** Lays every piece that is neither fixed nor held to a fold across the cloth; those must lie already. */
export function layInColumns(field: LayField): void {
  const { table } = field;
  const shapeOf = (i: number) => table.shapes[field.shape[i] as number] as LayShape;
  const isSet = (i: number) => field.fixed[i] === 1 || shapeOf(i).heldX === 1;
  let begin = 0;
  for (const i of field.all) if (isSet(i)) begin = Math.max(begin, (field.x[i] as number) + shapeOf(i).wide);
  const free = field.all.filter((i) => !isSet(i));
  for (const i of free) field.shape[i] = shortestShape(field, i);
  free.sort((a, b) => shapeOf(b).wide - shapeOf(a).wide || a - b);
  let end = begin;
  let level = 0;
  for (const i of free) {
    const shape = shapeOf(i);
    const y = firstOnRepeat(level, table.repeatY, shape.phaseY);
    const isNew = shape.heldY === 1 || y > table.across - shape.high;
    if (isNew) begin = end;
    field.x[i] = firstOnRepeat(begin, table.repeatX, shape.phaseX);
    field.y[i] = shape.heldY ? 0 : isNew ? firstOnRepeat(0, table.repeatY, shape.phaseY) : y;
    level = (field.y[i] as number) + shape.high;
    end = Math.max(end, (field.x[i] as number) + shape.wide);
  }
}

/** Of the shapes a piece may take and that go across the cloth the one that takes least of its length. */
function shortestShape({ table }: LayField, i: number): number {
  const going = (table.items[i]?.shapes ?? []).filter((s) => goesAcross(table, table.shapes[s] as LayShape));
  return going.reduce((a, b) => ((table.wide[b] as number) < (table.wide[a] as number) ? b : a));
}

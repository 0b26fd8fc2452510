import { isClosed } from '../../core/geometry/path';
import type { Path } from '../../core/geometry/segment';

/** A path in the words of SVG's `d`, in its own units. */
export function svgPath(path: Path): string {
  const first = path[0];
  if (!first) return '';
  const parts = [`M${first.p0.x} ${first.p0.y}`];
  for (const segment of path) {
    if (segment.kind === 'line') parts.push(`L${segment.p1.x} ${segment.p1.y}`);
    else {
      const { p1, p2, p3 } = segment;
      parts.push(`C${p1.x} ${p1.y} ${p2.x} ${p2.y} ${p3.x} ${p3.y}`);
    }
  }
  if (isClosed(path)) parts.push('Z');
  return parts.join('');
}

/** What the scale of one picture makes of another that has the same. */
import type { Diagram, SharedScale } from '../garment/diagram';
import type { SquaredPlane } from './squared-plane';

type Picture = Pick<Diagram, 'widthPx' | 'heightPx' | 'onPaper' | 'quarterTurns' | 'squareUp'>;

interface Both {
  readonly across: number;
  readonly down: number;
}

/** mm at full size for one unit of a picture's plane, by another picture that is alike; `undefined` where it is not. */
export function scaleAlike(
  diagram: Picture,
  plane: SquaredPlane,
  {
    by,
    source,
    map,
  }: {
    readonly by: SharedScale['by'];
    readonly source: Picture;
    readonly map: Both & { readonly plane: SquaredPlane };
  },
): Both | undefined {
  if (!waysAlike(diagram, source).includes(by)) return undefined;
  if (by === 'pixel') return { across: map.across, down: map.down };
  const [theirs, mine] = by === 'rectangle' ? [map.plane, plane] : [paperToUnit(source), paperToUnit(diagram)];
  if (!theirs || !mine) return undefined;
  // A rectangle of the same size has fewer units where each is larger; a sheet of paper has more paper to each.
  const factor = (way: keyof Both) => (by === 'rectangle' ? theirs[way] / mine[way] : mine[way] / theirs[way]);
  return { across: map.across * factor('across'), down: map.down * factor('down') };
}

/** By what two pictures can be said to have one scale, the surest first. */
export function waysAlike(one: Picture, other: Picture): readonly SharedScale['by'][] {
  const areFlat = one.squareUp.kind === 'flat' && other.squareUp.kind === 'flat';
  if (areFlat) return one.onPaper && other.onPaper ? ['paper', 'pixel'] : ['pixel'];
  return one.squareUp.kind === 'rectangle' && other.squareUp.kind === 'rectangle' ? ['rectangle'] : [];
}

/** mm of paper to a pixel, across and down as the picture lies. */
function paperToUnit({ onPaper, widthPx, heightPx, quarterTurns }: Picture): Both | undefined {
  if (!onPaper) return undefined;
  const [across, down] = [onPaper.across / widthPx, onPaper.down / heightPx];
  return quarterTurns % 2 === 0 ? { across, down } : { across: down, down: across };
}

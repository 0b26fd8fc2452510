import type { Garment } from '../../core/garment/garment';
import { type EdgeRef, isSameEdge } from '../../core/garment/seam';
import { Pick } from '../ui/pick';
import { edgeName } from './seam-names';
import { sewableEdges } from './seam-sums';

interface EdgePickProps {
  readonly label: string;
  readonly garment: Garment;
  readonly value: EdgeRef | undefined;
  /** What stands in the list for no edge. */
  readonly none: string;
  readonly onChange: (edge: EdgeRef | undefined) => void;
  readonly leaveOut?: readonly EdgeRef[];
}

/** An edge of any piece, by its name, or none. */
export function EdgePick({ label, garment, value, none, onChange, leaveOut = [] }: EdgePickProps) {
  const edges = sewableEdges(garment)
    .map(({ pieceId, edgeId }) => ({ pieceId, edgeId }))
    .filter((edge) => !leaveOut.some((each) => isSameEdge(each, edge)));
  return (
    <Pick
      label={label}
      value={value ? keyOf(value) : ''}
      options={[
        { value: '', words: none },
        ...edges.map((edge) => ({ value: keyOf(edge), words: edgeName(garment, edge) })),
      ]}
      onChange={(key) => onChange(edges.find((edge) => keyOf(edge) === key))}
    />
  );
}

function keyOf({ pieceId, edgeId }: EdgeRef): string {
  return `${pieceId} ${edgeId}`;
}

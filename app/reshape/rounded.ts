import { useTable } from '../state/table-store';

/** A length that came from the pointer, brought to the step things snap to, while they do. */
export function rounded(length: number): number {
  const { snapping, snapStep } = useTable.getState();
  return snapping ? Math.round(length / snapStep) * snapStep : length;
}

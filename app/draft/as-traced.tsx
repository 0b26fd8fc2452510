import { useCallback, useMemo } from 'react';
import { firstDrawn } from '../../core/garment/first-drawn';
import { useGarment } from '../state/garment-store';
import { paintAsTraced } from '../table/paint-other';
import { type Paint, Painted } from '../table/painted';

/** The pieces as they were first drawn, to lie under the draft. */
export function AsTraced() {
  const garment = useGarment((state) => state.garment);
  const past = useGarment((state) => state.past);
  const traced = useMemo(() => (garment ? firstDrawn(garment, past, 0).traced : []), [garment, past]);
  const paint = useCallback<Paint>((ink, { px }) => paintAsTraced(ink, traced, px), [traced]);
  return <Painted paint={paint} />;
}

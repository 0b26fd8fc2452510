import { useMemo } from 'react';
import type { PhotoPoint } from '../../core/geometry/point';
import { type BarReading, barIntervals } from '../../core/picture/bar-intervals';
import { inGrey, inPicture, usePictureInk } from '../photo/picture-ink';
import type { ReadyPicture } from '../photo/picture-store';
import { useInk } from '../photo/use-ink';

/** What is seen of a scale bar between two places of a picture, in its pixels; while its lines are read, how far that is. */
export type BarSeen =
  | { readonly kind: 'not-asked' }
  | { readonly kind: 'reading'; readonly share: number }
  | { readonly kind: 'unreadable' }
  | { readonly kind: 'read'; readonly readings: readonly BarReading[] };

/** A line on the picture, from one end of a scale bar to the other. */
export interface BarLine {
  readonly from: PhotoPoint;
  readonly to: PhotoPoint;
}

/** Counts the intervals of a scale bar in the picture, while that is asked for. */
export function useBarReading(photo: ReadyPicture | undefined, { from, to }: BarLine, isAsked: boolean): BarSeen {
  useInk(photo, isAsked);
  const ink = usePictureInk((state) => state.ink);
  return useMemo(() => {
    if (!photo || !isAsked) return { kind: 'not-asked' };
    if (ink.kind === 'none' || ink.key !== photo.key) return { kind: 'reading', share: 0 };
    if (ink.kind !== 'read') return ink;
    const readings = barIntervals(ink.grey, inGrey(ink, from), inGrey(ink, to)).map((reading) => ({
      ...reading,
      from: inPicture(ink, reading.from),
      to: inPicture(ink, reading.to),
    }));
    return { kind: 'read', readings };
  }, [photo, isAsked, ink, from, to]);
}

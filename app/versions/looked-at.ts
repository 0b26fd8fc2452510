import { useMemo } from 'react';
import { create } from 'zustand';
import { type FirstDrawn, firstDrawn } from '../../core/garment/first-drawn';
import type { Garment } from '../../core/garment/garment';
import { garmentOfVersion, type StoredVersion } from '../../core/garment/version';
import { useGarment } from '../state/garment-store';

/** What lies on the table of this room. */
export type LookedAt =
  | { readonly kind: 'now' }
  | { readonly kind: 'version'; readonly number: number }
  | { readonly kind: 'traced' };

interface Looking {
  /** Of which garment; another one on the table is looked at as it is now. */
  readonly garmentId: string | undefined;
  readonly at: LookedAt;
  readonly tracedBeneath: boolean;
}

/** What is looked at. Never stored. */
export const useLooking = create<Looking>(() => ({ garmentId: undefined, at: { kind: 'now' }, tracedBeneath: false }));

const NOW: LookedAt = { kind: 'now' };

/** What is looked at of a garment. */
export function useLookedAt(garmentId: string): LookedAt {
  return useLooking((looking) => (looking.garmentId === garmentId ? looking.at : NOW));
}

/** The garment of the version that is looked at; nothing when none is, or it cannot be read. */
export function useVersionGarment(versions: readonly StoredVersion[], at: LookedAt): Garment | undefined {
  const number = at.kind === 'version' ? at.number : undefined;
  return useMemo(() => (number === undefined ? undefined : garmentOfVersion(versions, number)), [versions, number]);
}

/** The pieces of the garment on the table as they were first drawn. */
export function useFirstDrawn(garment: Garment): FirstDrawn {
  const past = useGarment((state) => state.past);
  return useMemo(() => firstDrawn(garment, past, Date.now()), [garment, past]);
}

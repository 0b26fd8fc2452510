import type { Garment } from './garment';
import type { Mockup, PinnedChange, PinnedState } from './mockup';
import { withOne, withoutOne } from './with-piece';

/** The garment with one more mock-up, the newest last. */
export function addMockup(garment: Garment, mockup: Mockup): Garment {
  return { ...garment, mockups: [...(garment.mockups ?? []), mockup] };
}

/** The garment with a mock-up changed. */
export function changeMockup(garment: Garment, mockupId: string, change: (mockup: Mockup) => Mockup): Garment {
  const { mockups = [] } = garment;
  const changed = withOne(mockups, mockupId, change);
  return changed === mockups ? garment : { ...garment, mockups: changed };
}

/** The garment without a mock-up and all that was pinned on it. */
export function removeMockup(garment: Garment, mockupId: string): Garment {
  const { mockups = [], ...bare } = garment;
  const left = withoutOne(mockups, mockupId);
  if (left === mockups) return garment;
  return left.length > 0 ? { ...bare, mockups: left } : bare;
}

/** The garment with a pinned change put down, or the one of the same id replaced. */
export function putPinned(garment: Garment, mockupId: string, pinned: PinnedChange): Garment {
  return changeMockup(garment, mockupId, (mockup) =>
    mockup.pinned.some(({ id }) => id === pinned.id)
      ? { ...mockup, pinned: withOne(mockup.pinned, pinned.id, () => pinned) }
      : { ...mockup, pinned: [...mockup.pinned, pinned] },
  );
}

/** The garment without a pinned change. */
export function removePinned(garment: Garment, mockupId: string, pinnedId: string): Garment {
  return changeMockup(garment, mockupId, (mockup) => {
    const pinned = withoutOne(mockup.pinned, pinnedId);
    return pinned === mockup.pinned ? mockup : { ...mockup, pinned };
  });
}

/** The garment with what became of some pinned changes: carried over, declined, or back to noted. The draft stays as it is. */
export function settlePinned(
  garment: Garment,
  mockupId: string,
  pinnedIds: readonly string[],
  state: PinnedState,
): Garment {
  return changeMockup(garment, mockupId, (mockup) => {
    if (!mockup.pinned.some(({ id }) => pinnedIds.includes(id))) return mockup;
    return { ...mockup, pinned: mockup.pinned.map((one) => (pinnedIds.includes(one.id) ? { ...one, state } : one)) };
  });
}

import type { FindingBase } from '../garment/finding';
import type { Garment } from '../garment/garment';
import type { Mockup, PinnedChange } from '../garment/mockup';

/** What a mock-up still has to say before real cloth is cut: changes neither carried over nor declined. */
export type MockupFinding = FindingBase & {
  readonly kind: 'pinned-not-carried';
  readonly mockup: Mockup;
  readonly pinned: readonly PinnedChange[];
};

/** One for each mock-up with something outstanding, the oldest first. */
export function mockupFindings({ mockups = [] }: Pick<Garment, 'mockups'>): MockupFinding[] {
  return mockups.flatMap((mockup): MockupFinding[] => {
    const pinned = outstanding(mockup);
    if (pinned.length === 0) return [];
    const place = { kind: 'mockup', mockupId: mockup.id } as const;
    return [{ kind: 'pinned-not-carried', weight: 'stop', place, mockup, pinned }];
  });
}

/** What is noted of a mock-up and neither carried over nor declined. */
export function outstanding({ pinned }: Pick<Mockup, 'pinned'>): readonly PinnedChange[] {
  return pinned.filter(({ state }) => state.kind === 'noted');
}

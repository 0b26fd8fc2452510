import { create } from 'zustand';
import type { Mockup, PinnedChange } from '../../core/garment/mockup';
import { useGarment } from '../state/garment-store';

interface MockupState {
  /** The mock-up in hand; the newest unless she has taken up another. */
  readonly mockupId: string | undefined;
  /** A change being noted or changed; nothing of it belongs to the garment yet. */
  readonly noting: PinnedChange | undefined;
  /** Which of its pins the steppers speak of. */
  readonly pin: number;
  /** The changes whose carrying over is being shown, and those still to come after them. */
  readonly carrying: { readonly ids: readonly string[]; readonly toCome: readonly string[] } | undefined;
}

const atFirst: MockupState = { mockupId: undefined, noting: undefined, pin: 0, carrying: undefined };

export const useMockup = create<MockupState>(() => atFirst);

/** Takes a mock-up in hand. */
export function openMockup(mockupId: string): void {
  useMockup.setState({ ...atFirst, mockupId });
}

/** The mock-up in hand. */
export function mockupInHand(mockups: readonly Mockup[], mockupId: string | undefined): Mockup | undefined {
  return mockups.find(({ id }) => id === mockupId) ?? mockups.at(-1);
}

/** Shows a change being noted, or shows it with other numbers; `pin` says which of its pins is in hand. */
export function note(noting: PinnedChange, pin?: number): void {
  useMockup.setState({ noting, carrying: undefined, ...(pin === undefined ? {} : { pin }) });
}

/** Shows what carrying over would do. */
export function carry(ids: readonly string[], toCome: readonly string[] = []): void {
  useMockup.setState({ noting: undefined, carrying: { ids, toCome } });
}

/** Goes on to the next change to be carried over, if one is left. */
export function carryNext(): void {
  const [next, ...rest] = useMockup.getState().carrying?.toCome ?? [];
  useMockup.setState({ carrying: next === undefined ? undefined : { ids: [next], toCome: rest } });
}

/** Puts away what is being noted or shown; the garment stays as it is. */
export function leave(): void {
  useMockup.setState({ noting: undefined, carrying: undefined, pin: 0 });
}

// Another garment is another job.
useGarment.subscribe((now, before) => {
  if (now.garment?.id !== before.garment?.id) useMockup.setState(atFirst);
});

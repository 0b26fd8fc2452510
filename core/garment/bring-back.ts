import type { Garment } from './garment';
import type { Mockup, PinnedChange } from './mockup';

/**
 * The garment with its draft as it was in a version: pieces, rings, seams, printed figures and the pictures under them. What has happened
 * since stays known: measures taken, what was printed and cut, fittings, notes. A change pinned at a fitting counts as
 * carried over just when it was in the version. `newest` is the highest number there is now.
 */
export function broughtBack(
  now: Garment,
  version: Garment,
  { number, newest }: { readonly number: number; readonly newest: number },
): Garment {
  const { seams: _, wholes: __, mockups, ...rest } = now;
  const drawn = new Set(version.diagrams.map(({ id }) => id));
  return {
    ...rest,
    pieces: version.pieces,
    rings: version.rings,
    diagrams: [...version.diagrams, ...now.diagrams.filter(({ id }) => !drawn.has(id))],
    ...(version.seams && { seams: version.seams }),
    ...(version.wholes && { wholes: version.wholes }),
    ...(mockups && { mockups: mockups.map((mockup) => asCarriedIn(mockup, version)) }),
    drawnFrom: { version: number, newest },
  };
}

function asCarriedIn(mockup: Mockup, version: Garment): Mockup {
  const then = version.mockups?.find(({ id }) => id === mockup.id)?.pinned ?? [];
  return { ...mockup, pinned: mockup.pinned.map((pinned) => stateIn(pinned, then)) };
}

function stateIn(pinned: PinnedChange, then: readonly PinnedChange[]): PinnedChange {
  const was = then.find(({ id }) => id === pinned.id)?.state;
  if (was?.kind === 'carried') return { ...pinned, state: was };
  return pinned.state.kind === 'carried' ? { ...pinned, state: { kind: 'noted' } } : pinned;
}

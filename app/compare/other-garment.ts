import { useEffect, useMemo, useState } from 'react';
import { draftBlock } from '../../core/blocks/block';
import { asGarment } from '../../core/compare/girths-beside';
import type { Garment } from '../../core/garment/garment';
import { garmentOfVersion, type StoredVersion } from '../../core/garment/version';
import { bodyOf } from '../base/first-block';
import type { ShelfRow } from '../storage/database';
import { lookAtGarment } from '../storage/open-garment';
import { isReplayed, listShelf } from '../storage/shelf';
import { versionsOf } from '../storage/versions';
import { blockWords } from '../words/blocks';
import { compareWords as words } from '../words/compare';
import { fieldOf } from '../words/measures';
import { shelfWords } from '../words/shelf';
import type { Source } from './compare-store';

/** What there is to compare with: the versions of the garment, and the other garments on the shelf. */
export interface Kept {
  readonly versions: readonly StoredVersion[];
  readonly shelf: readonly ShelfRow[];
}

/** The garment the other piece is of, only to be looked at; or why there is none. */
export type Other =
  | { readonly kind: 'fetching' }
  | { readonly kind: 'garment'; readonly garment: Garment }
  | { readonly kind: 'none'; readonly sentence: string };

/** What this device keeps beside the garment on the table; empty where nothing can be kept. `undefined` while it is fetched. */
export function useKept(garmentId: string): Kept | undefined {
  const [kept, setKept] = useState<Kept & { readonly of: string }>();
  useEffect(() => {
    let wanted = true;
    const fetched = Promise.all([versionsOf(garmentId), listShelf()]);
    fetched
      .then(([versions, rows]) => ({ versions, shelf: rows.filter(({ id }) => id !== garmentId) }))
      // Without storage there is nothing kept to compare with; the other sources are still there.
      .catch(() => ({ versions: [], shelf: [] }))
      .then((found) => wanted && setKept({ ...found, of: garmentId }));
    return () => {
      wanted = false;
    };
  }, [garmentId]);
  return kept?.of === garmentId ? kept : undefined;
}

/** The garment a source speaks of. Nothing is opened or followed: it can be read, never changed. */
export function useOther(garment: Garment, source: Source, kept: Kept | undefined): Other {
  const fromShelf = useFromShelf(source.kind === 'shelf' ? source.garmentId : undefined);
  const versions = kept?.versions;
  return useMemo((): Other => {
    switch (source.kind) {
      case 'piece':
        return { kind: 'garment', garment };
      case 'traced':
        return asTraced(garment);
      case 'version': {
        if (!versions) return { kind: 'fetching' };
        const found = garmentOfVersion(versions, source.number);
        return found ? { kind: 'garment', garment: found } : none(words.versionDamaged(source.number));
      }
      case 'shelf':
        return fromShelf;
      case 'draft':
        return drafted(garment, source);
    }
  }, [garment, source, versions, fromShelf]);
}

function none(sentence: string): Other {
  return { kind: 'none', sentence };
}

/** The pieces as first drawn. A ring of which not every piece was is left out: half of it would not go round. */
function asTraced(garment: Garment): Other {
  const pieces = garment.traced ?? [];
  if (pieces.length === 0) return none(words.nothingTraced);
  const there = new Set(pieces.map(({ id }) => id));
  const rings = garment.rings.filter(({ members }) => members.every(({ pieceId }) => there.has(pieceId)));
  return { kind: 'garment', garment: { ...garment, pieces, rings } };
}

function drafted(garment: Garment, { block }: Extract<Source, { kind: 'draft' }>): Other {
  let count = 0;
  const newId = () => {
    count += 1;
    return `draft-${count}`;
  };
  const draft = draftBlock(block, bodyOf(garment), { newId, nameOf: blockWords.nameOf });
  if (draft.kind === 'measures-missing') return none(blockWords.missing(draft.missing.map(fieldOf).join(', ')));
  if (draft.kind !== 'drafted') return none(blockWords.refusal(draft));
  return { kind: 'garment', garment: asGarment(garment, draft.pieces) };
}

const FETCHING: Other = { kind: 'fetching' };

function useFromShelf(garmentId: string | undefined): Other {
  const [found, setFound] = useState<{ readonly id: string; readonly other: Other }>();
  useEffect(() => {
    if (garmentId === undefined) return;
    let wanted = true;
    looked(garmentId).then((other) => wanted && setFound({ id: garmentId, other }));
    return () => {
      wanted = false;
    };
  }, [garmentId]);
  return found && found.id === garmentId ? found.other : FETCHING;
}

async function looked(garmentId: string): Promise<Other> {
  try {
    const read = await lookAtGarment(garmentId);
    if (isReplayed(read)) return { kind: 'garment', garment: read.garment };
    return none(
      { missing: shelfWords.missing, newer: words.shelfNewer, 'not-a-garment': words.shelfDamaged }[read.kind],
    );
  } catch {
    return none(words.shelfDamaged);
  }
}

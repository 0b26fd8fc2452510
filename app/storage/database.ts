import Dexie, { type EntityTable, type Table } from 'dexie';
import type { Change } from '../../core/garment/change';
import type { Garment } from '../../core/garment/garment';
import { shelfText } from '../../core/garment/shelf-text';
import type { StoredVersion } from '../../core/garment/version';
import type { Copied } from '../state/copy-age';

/** A garment on the shelf, without its contents. */
export interface ShelfRow {
  readonly id: string;
  readonly name: string;
  /** Milliseconds since 1970. */
  readonly changed: number;
  readonly pieces: number;
  /** YYYY-MM-DD; not in rows of before the shelf was sorted by it. */
  readonly made?: string;
  /** By which it is sought (`shelfText`); not in rows of before the shelf could be searched. */
  readonly text?: string;
}

/** A garment that is put away: kept, and out of the way. Apart from its row, which is written anew at every change. */
export interface PutAwayRow {
  readonly id: string;
}

/** The small picture of a garment on the shelf: made from what the device has, and made anew when it is lost. */
export interface CoverRow {
  readonly id: string;
  /** The `changed` of the shelf row it was last looked over for. */
  readonly changed: number;
  /** What it was made from, so that a change of something else does not make it anew. */
  readonly madeFrom: string;
  readonly bytes: ArrayBuffer;
  readonly type: string;
}

/** The last copy of a garment outside the browser, and the file it was written to where that is known. */
export interface CopyRow extends Copied {
  readonly id: string;
  /** As it was left: a file that is otherwise now is someone else's work. */
  readonly file?: { readonly name: string; readonly size: number; readonly modified: number };
}

/** The folder of her choosing that copies go to. */
export interface PlaceRow {
  readonly id: 'folder';
  readonly handle: FileSystemDirectoryHandle;
}

/** How the shelf shows a garment that has just changed. */
export function shelfRow(garment: Garment): ShelfRow {
  const { id, name, made, pieces } = garment;
  return { id, name, made, changed: Date.now(), pieces: pieces.length, text: shelfText(garment) };
}

/** The whole of a garment with its history at one entry of the journal; everything after `seq` is replayed on it. */
export interface SnapshotRow {
  readonly garmentId: string;
  readonly seq: number;
  /** A garment of some schema: checked when read. */
  readonly garment: unknown;
  readonly past: readonly StoredStep[];
  readonly future: readonly StoredStep[];
}

export interface StoredStep {
  readonly change: Change;
  readonly label: string;
  readonly time: number;
}

/** One entry of the journal. Entries are only ever added. */
export interface JournalRow {
  readonly garmentId: string;
  readonly seq: number;
  readonly entry:
    | { readonly kind: 'step'; readonly step: StoredStep }
    /** The last step grew by a further nudge. */
    | { readonly kind: 'grown'; readonly step: StoredStep }
    | { readonly kind: 'undo' }
    | { readonly kind: 'redo' };
}

/** A stored picture. Never rewritten. */
export interface PhotoRow {
  readonly id: string;
  readonly bytes: ArrayBuffer;
  readonly type: string;
  readonly name: string;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** The shape of the store. A store with a higher number was made by a newer program. */
export const STORE_VERSION = 4;

class InchsquareDatabase extends Dexie {
  readonly shelf!: EntityTable<ShelfRow, 'id'>;
  readonly snapshots!: Table<SnapshotRow, [string, number]>;
  readonly journal!: Table<JournalRow, [string, number]>;
  readonly photos!: EntityTable<PhotoRow, 'id'>;
  readonly versions!: Table<StoredVersion, [string, number]>;
  readonly putAway!: EntityTable<PutAwayRow, 'id'>;
  readonly covers!: EntityTable<CoverRow, 'id'>;
  readonly copies!: EntityTable<CopyRow, 'id'>;
  readonly places!: EntityTable<PlaceRow, 'id'>;

  constructor() {
    super('inchsquare');
    this.version(1).stores({
      shelf: 'id, changed',
      snapshots: '[garmentId+seq], garmentId',
      journal: '[garmentId+seq], garmentId',
      photos: 'id',
    });
    this.version(2).stores({ versions: '[garmentId+number], garmentId' });
    // Rows of the shelf are not touched here: they are brought up when the shelf is next looked at (`bringUpRows`).
    this.version(3).stores({ putAway: 'id', covers: 'id' });
    this.version(STORE_VERSION).stores({ copies: 'id', places: 'id' });
  }
}

/** The browser's own store on this device. */
export const database = new InchsquareDatabase();

import type { CopyRow } from './database';
import { download } from './download';
import { openFolder, writeInFolder } from './folder';

/** Where a file went. */
export type Saved =
  | { readonly to: 'downloads' }
  | { readonly to: 'folder'; readonly folder: string; readonly file: NonNullable<CopyRow['file']> }
  /** The folder she chose would not take it, so it went to the downloads. */
  | { readonly to: 'downloads-instead' };

/** Saves a zip file to the folder of her choosing, or by the browser's own way. `last` is the file it may write over. */
export async function saveFile(
  { name, ending }: { readonly name: string; readonly ending: string },
  make: () => Promise<Uint8Array>,
  last: CopyRow['file'],
): Promise<Saved> {
  // Asked first: the browser only lets a page ask shortly after a press.
  const folder = await openFolder();
  const bytes = await make();
  if (typeof folder === 'object') {
    try {
      const file = await writeInFolder(folder, { name, ending, bytes, last });
      return { to: 'folder', folder: folder.name, file };
    } catch {
      // It may have been moved, renamed or filled up; the file is what matters.
    }
  }
  download(bytes.slice(), `${name}${ending}`, 'application/zip');
  return { to: folder === 'none' ? 'downloads' : 'downloads-instead' };
}

import { connected } from './connection';
import { type CopyRow, database } from './database';

// Of a working draft of the web's file system; browsers that lack them save by downloading.
interface Permitted {
  queryPermission?(wanted: { readonly mode: 'readwrite' }): Promise<PermissionState>;
  requestPermission?(wanted: { readonly mode: 'readwrite' }): Promise<PermissionState>;
}
type Folder = FileSystemDirectoryHandle & Permitted;
interface Picking {
  showDirectoryPicker?(options: { readonly id: string; readonly mode: 'readwrite' }): Promise<Folder>;
}

const ROW = 'folder';

/** Whether this browser can save to a folder of her choosing. */
export function canChooseFolder(): boolean {
  return typeof (globalThis as Picking).showDirectoryPicker === 'function';
}

/** Lets her choose the folder that copies go to; nothing when she thinks better of it. */
export async function chooseFolder(): Promise<string | undefined> {
  let handle: Folder | undefined;
  try {
    handle = await (globalThis as Picking).showDirectoryPicker?.({ id: 'inchsquare', mode: 'readwrite' });
  } catch (fault) {
    if ((fault as { readonly name?: string }).name === 'AbortError') return undefined;
    throw fault;
  }
  if (!handle) return undefined;
  const place = { id: ROW, handle } as const;
  await connected(() => database.places.put(place));
  return handle.name;
}

/** From now on copies go to the browser's downloads again. */
export async function forgetFolder(): Promise<void> {
  await connected(() => database.places.delete(ROW));
}

/** The name of the folder that copies go to; nothing where they go to the browser's downloads. */
export async function folderName(): Promise<string | undefined> {
  return (await chosen())?.name;
}

/** The folder, where the browser lets the page write into it; it may ask her once more. */
export async function openFolder(): Promise<FileSystemDirectoryHandle | 'none' | 'not-allowed'> {
  const folder = await chosen().catch(() => undefined);
  if (!folder) return 'none';
  const wanted = { mode: 'readwrite' } as const;
  try {
    if ((await folder.queryPermission?.(wanted)) === 'granted') return folder;
    return (await folder.requestPermission?.(wanted)) === 'granted' ? folder : 'not-allowed';
  } catch {
    return 'not-allowed';
  }
}

/**
 * Writes a file into the folder. A file of that name is written over only when it is `last`, as this browser left it: any
 * other stays, and the new one gets a number. Browsers put a file in its place when it is whole, never in part.
 */
export async function writeInFolder(
  folder: FileSystemDirectoryHandle,
  { name, ending, bytes, last }: { name: string; ending: string; bytes: Uint8Array; last: CopyRow['file'] },
): Promise<NonNullable<CopyRow['file']>> {
  for (let number = 1; ; number++) {
    const called = `${name}${number === 1 ? '' : `-${number}`}${ending}`;
    const there = await fileAt(folder, called);
    const isOurs = last?.name === called && there?.size === last.size && there.lastModified === last.modified;
    if (there && !isOurs) continue;
    const handle = await folder.getFileHandle(called, { create: true });
    const stream = await handle.createWritable();
    await stream.write(bytes.slice());
    await stream.close();
    const { size, lastModified } = await handle.getFile();
    return { name: called, size, modified: lastModified };
  }
}

async function fileAt(folder: FileSystemDirectoryHandle, name: string): Promise<File | undefined> {
  try {
    return await (await folder.getFileHandle(name)).getFile();
  } catch (fault) {
    if ((fault as { readonly name?: string }).name === 'NotFoundError') return undefined;
    throw fault;
  }
}

async function chosen(): Promise<Folder | undefined> {
  return (await connected(() => database.places.get(ROW)))?.handle;
}

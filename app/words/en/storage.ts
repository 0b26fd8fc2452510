import type { CopyAge } from '../../state/copy-age';

const changes = (count: number) => (count === 1 ? '1 change' : `${count} changes`);

/** Sentences about keeping garments on this device. */
export const storageWords = {
  full: 'this device has no room left. Save the garment to a file, then make room.',
  cannotWrite: 'the browser would not write. I keep trying; save the garment to a file to be safe.',
  keepsNothing:
    'this browser lets the page keep nothing, as in some private windows. Save the garment to a file before you close it.',
  changedElsewhere:
    'this garment was changed in another window since it was opened in this one. Save it to a file to keep both.',
  newerElsewhere: 'a newer Inchsquare was opened in another window. Save the garment to a file, then reload this page.',
  blocked:
    'an older Inchsquare, open in another window of this browser, holds what is kept. Close its other windows and this goes on by itself; until then save the garment to a file to be safe.',
  newerStore:
    'a newer Inchsquare has kept garments in this browser, and nothing is written into what it made. Reload the page to bring this one up to date; until then save the garment to a file.',
  openElsewhere: 'this garment is open in another window, and only one window at a time can change it.',
  /** Of a garment laid beside the one that was changed in another window meanwhile. */
  beside: 'kept beside',
  besideName: (name: string) => `${name}, kept beside`,
  /** The name of a file whose garment has none. */
  unnamedFile: 'garment',
  /** Bytes as people read them: never more exact than is any use. */
  bytes: (bytes: number) => {
    const megabytes = bytes / 1024 / 1024;
    if (megabytes < 1) return 'less than 1 MB';
    if (megabytes < 1000) return `${Math.round(megabytes)} MB`;
    return `${(megabytes / 1024).toFixed(megabytes < 10_000 ? 1 : 0)} GB`;
  },
  used: (used: string, left: string) =>
    `${used} used in this browser. It allows up to ${left} more, as far as the device has room.`,
  usedUnknown: 'This browser does not say how much room is left.',
  stays: 'The browser has said that it will not clear this by itself. A file is still the safest copy.',
  mayGo: 'The browser may clear this when the device runs short of room: keep copies in files.',
  needsNetwork:
    'The program itself is not kept in this browser: as it is served here it needs the network each time it is opened. Over https, or on this machine alone, it works without.',
  copies: 'Copies in files',
  copyAge: (age: CopyAge) => {
    if (age.kind === 'none')
      return age.changes === 0 ? 'no copy in a file' : `no copy in a file, ${changes(age.changes)}`;
    if (age.changes === 0) return 'copied to a file as it is';
    const when = age.days === 0 ? 'today' : age.days === 1 ? '1 day ago' : `${age.days} days ago`;
    return `copied to a file ${when}, ${changes(age.changes)} since`;
  },
  toDownloads: 'Files go where the browser puts its downloads.',
  toFolder: (folder: string) =>
    `Files go to the folder “${folder}”. A file that was changed by others is never written over.`,
  chooseFolder: 'Choose a folder for them',
  otherFolder: 'Choose another folder',
  noFolder: 'Use the downloads again',
  folderChosen: (folder: string) => `From now on files go to the folder “${folder}”. The browser may ask you again.`,
  folderFailed: 'The browser would not take that folder. Choose another, or save as before.',
  savedIn: (folder: string, name: string) => `Saved in the folder “${folder}” as ${name}.`,
  savedDownload: 'Saved to a file, among the downloads of this browser.',
  savedInstead:
    'The folder could not be written to, so the file went to the downloads. Choose the folder anew on the shelf.',
  notSaved: (name: string) => `${name} could not be saved to a file. Reload the page and try again.`,
  fileAlone:
    'The file holds the draft. Its earlier versions or its pictures could not be read from this browser and are not in it.',
  reserveSpent:
    'This device is full, or nearly so. Your work is kept in a small reserve for now, but no more pictures may fit. Save your garments to files, then take some off the shelf or make room on the device.',
  short: (left: string) =>
    `Little room is left on this device: ${left}. Save your garments to files, then take some off the shelf or make room on the device, before something cannot be kept.`,
} as const;

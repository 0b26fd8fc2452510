import type { Garment } from '../../core/garment/garment';
import { type SavedProject, saveProject } from '../storage/save-project';
import { say } from '../ui/say';
import { storageWords as words } from '../words/storage';

/** Saves a garment to a file and says where it went, or that it did not. */
export async function saveAndSay(garment: Garment): Promise<void> {
  try {
    say(savedSentence(await saveProject(garment)));
  } catch {
    say(words.notSaved(garment.name));
  }
}

function savedSentence(saved: SavedProject): string {
  if (saved.holds === 'draft-alone') return words.fileAlone;
  if (saved.to === 'folder') return words.savedIn(saved.folder, saved.file.name);
  return saved.to === 'downloads-instead' ? words.savedInstead : words.savedDownload;
}

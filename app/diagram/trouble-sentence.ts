import type { PictureTrouble } from '../photo/picture-store';
import { diagramWords as words } from '../words/diagram';

/** Why a picture did not come in, and what to do about it. */
export function troubleSentence(trouble: PictureTrouble): string {
  switch (trouble.kind) {
    case 'missing':
      return words.missing;
    case 'other-format':
      return words.otherFormat[trouble.format];
    case 'too-many-pixels':
      return words.tooManyPixels(trouble.widthPx, trouble.heightPx);
    default:
      return words.refused[trouble.kind];
  }
}

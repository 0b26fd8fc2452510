import type * as english from '../en/clean-up';
import type { Said } from '../said';

export const cleanUpWords: Said<typeof english.cleanUpWords> = {
  label: 'Das Bild säubern',
  how: {
    'as-it-is': 'Wie es ist',
    even: 'Gleichmäßiges Licht',
    contrast: 'Mehr Kontrast',
    'black-and-white': 'Schwarz und weiß',
  },
  busy: 'Wird gesäubert …',
  failed: 'Das Bild ließ sich nicht säubern, wahrscheinlich fehlt es an Speicher. Es wird gezeigt, wie es ist.',
};

import type * as english from '../en/ui';
import type { Said } from '../said';

export const uiWords: Said<typeof english.uiWords> = {
  weight: { stop: 'Muss geklärt werden:', warn: 'Einen Blick wert:', good: 'In Ordnung:' },
  lengthRefused(why, shownIn) {
    if (why === 'empty') return 'Schreibe hier eine Länge hin.';
    if (why === 'division-by-zero') return 'Unter dem Bruchstrich kann keine 0 stehen.';
    return shownIn === 'in'
      ? 'Das kann ich nicht als Länge lesen. Schreibe 7 1/2, 7,5, 3\' 2" oder 19 cm.'
      : 'Das kann ich nicht als Länge lesen. Schreibe 19, 19,5, 190 mm oder 7 1/2 in.';
  },
  lengthTooLarge: (most) => `Bitte höchstens ${most}.`,
  lengthTooSmall: (least) => `Das müssen mindestens ${least} sein.`,
  stepDown: (label, step) => `${label}: ${step} weniger`,
  stepUp: (label, step) => `${label}: ${step} mehr`,
  look: 'Hell oder dunkel',
  looks: { device: 'wie das Gerät', light: 'hell', dark: 'dunkel' },
  language: 'Sprache',
  languages: { en: 'English', de: 'Deutsch' },
  stop: 'Anhalten',
  notebook: 'Notizbuch',
  openNotebook: 'Notizbuch öffnen',
  closeNotebook: 'Notizbuch zuklappen',
  countWrong: (least, most) => `Schreibe eine ganze Zahl von ${least} bis ${most}.`,
  numberWrong: (least, most) => `Schreibe eine Zahl von ${least} bis ${most}.`,
};

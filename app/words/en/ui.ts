/** Words that belong to no one room. */
export const uiWords = {
  weight: { stop: 'Must be settled:', warn: 'Worth a look:', good: 'In order:' },
  lengthRefused(why: string, shownIn: 'in' | 'cm'): string {
    if (why === 'empty') return 'Write a length here.';
    if (why === 'division-by-zero') return 'A fraction cannot have 0 under the line.';
    return shownIn === 'in'
      ? 'That is not a length I can read. Write 7 1/2, 7.5, 3\' 2" or 19 cm.'
      : 'That is not a length I can read. Write 19, 19.5, 190 mm or 7 1/2 in.';
  },
  lengthTooLarge: (most: string) => `No more than ${most}, please.`,
  lengthTooSmall: (least: string) => `This must be at least ${least}.`,
  stepDown: (label: string, step: string) => `${label}: ${step} less`,
  stepUp: (label: string, step: string) => `${label}: ${step} more`,
  look: 'Light or dark',
  looks: { device: 'as the device', light: 'light', dark: 'dark' },
  language: 'Language',
  languages: { en: 'English', de: 'Deutsch' },
  stop: 'Stop',
  notebook: 'Notebook',
  openNotebook: 'Open the notebook',
  closeNotebook: 'Fold the notebook away',
  countWrong: (least: number, most: number) => `Write a whole number from ${least} to ${most}.`,
  numberWrong: (least: number, most: number) => `Write a number from ${least} to ${most}.`,
} as const;

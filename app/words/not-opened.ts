import type { Language } from './language';

/** What is said when the program did not come whole. It stands in every language here, for none could then be fetched. */
export const notOpened: Readonly<Record<Language, { readonly sentence: string; readonly again: string }>> = {
  en: {
    sentence:
      'Inchsquare did not come whole from where it is kept. Whatever is on this device is safe. Load the page anew; where that does not help, see whether there is a network.',
    again: 'Load the page anew',
  },
  de: {
    sentence:
      'Inchsquare ist nicht vollständig geladen worden. Was auf diesem Gerät liegt, ist sicher. Die Seite neu laden; hilft das nicht, bitte nachsehen, ob eine Verbindung zum Netz besteht.',
    again: 'Seite neu laden',
  },
};

import { inches } from '../units/inch';

/**
 * Widths cloth came in, selvedges counted, by when that was so. 18th century linen: an advertisement of 1773; flannel:
 * Garments for Girls (1910s); household cotton: Ingalls, Text-Book on Domestic Art (1911); dress goods of the 1920s to the
 * 1960s: widths by decade as collectors of period cloth record them; today's: common practice.
 */
export const USUAL_WIDTHS = [
  { width: inches(27), when: 'linen-1770' },
  { width: inches(31.5), when: 'linen-1770' },
  { width: inches(36), when: 'linen-1770' },
  { width: inches(24), when: 'before-1915' },
  { width: inches(28), when: 'before-1915' },
  { width: inches(27), when: 'flannel-1910' },
  { width: inches(36), when: 'cotton-1910' },
  { width: inches(54), when: 'wool-1910' },
  { width: inches(32), when: '1920' },
  { width: inches(36), when: '1930' },
  { width: inches(39), when: '1930' },
  { width: inches(45), when: '1960' },
  { width: inches(54), when: 'today' },
  { width: inches(60), when: 'today' },
] as const;

export type UsualWidth = (typeof USUAL_WIDTHS)[number];

/** The widths a lay is tried on side by side. */
export const WIDTHS_BESIDE = [36, 39, 45, 54, 60].map(inches);

import type { Room } from '../state/table-store';

/** The pages of the book that stands beside every room, in the order of the job. */
export type HowToName =
  | 'whole-job'
  | 'measuring'
  | 'photographing'
  | 'tracing'
  | 'curved-waist'
  | 'mock-up'
  | 'cloth'
  | 'printing'
  | 'brown-paper';

/** The pages in the order of the job. */
export const howToOrder: readonly HowToName[] = [
  'whole-job',
  'measuring',
  'photographing',
  'tracing',
  'curved-waist',
  'mock-up',
  'cloth',
  'printing',
  'brown-paper',
];

/** The page that speaks of what a room is for. */
export const howToOf: Readonly<Partial<Record<Room, HowToName>>> = {
  wearer: 'measuring',
  diagram: 'photographing',
  draft: 'tracing',
  reshape: 'tracing',
  fit: 'curved-waist',
  mockup: 'mock-up',
  cloth: 'cloth',
  paper: 'printing',
};

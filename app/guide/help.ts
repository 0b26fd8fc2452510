import type { DrawingName } from '../words/guide/how-to';
import type { HowToName } from './pages';

interface Help {
  /** A small drawing that helps to see what is meant. */
  readonly drawing?: DrawingName;
  /** The page of the book that tells more. */
  readonly page?: HowToName;
}

/** What there is help on, beside the card it is about; its sentences are in `words/guide/help.ts`. */
const helps = {
  who: { page: 'measuring' },
  measures: { drawing: 'tape-at-waist', page: 'measuring' },

  'square-up': { drawing: 'corner-pins', page: 'photographing' },
  'known-lengths': { drawing: 'known-length', page: 'photographing' },
  together: { drawing: 'two-laid', page: 'photographing' },
  'scale-check': { drawing: 'known-length', page: 'photographing' },
  source: {},
  diagrams: { drawing: 'page-weights', page: 'photographing' },

  tracing: { drawing: 'points-on-curve', page: 'tracing' },
  pieces: { page: 'tracing' },
  piece: { drawing: 'half-on-fold', page: 'tracing' },
  edge: { drawing: 'cut-line', page: 'tracing' },
  point: { drawing: 'points-on-curve', page: 'tracing' },
  outline: { page: 'tracing' },
  dart: { drawing: 'dart-legs' },
  notch: { drawing: 'notches-meet' },
  'words-on-piece': {},
  grain: { drawing: 'grain-ways', page: 'cloth' },
  'whole-garment': { drawing: 'round-the-body' },
  'printed-sums': { page: 'tracing' },

  'change-length': { drawing: 'longer-by' },
  'change-width': { drawing: 'slash-spread' },
  'change-darts': { drawing: 'dart-legs' },
  'change-waist': { drawing: 'straight-waist', page: 'curved-waist' },
  'new-pieces': {},
  trying: { drawing: 'two-laid' },

  seams: { drawing: 'walked-seam' },
  'proposed-pairs': { drawing: 'notches-meet' },
  'pair-edges': { drawing: 'walked-seam' },
  'loose-edges': {},
  'one-seam': { drawing: 'walked-seam' },
  walked: { drawing: 'walked-seam' },
  trueing: { drawing: 'walked-seam' },

  ring: { drawing: 'round-the-body', page: 'curved-waist' },
  'fit-findings': { drawing: 'round-the-body' },
  levels: { drawing: 'level-tape', page: 'measuring' },
  ease: { drawing: 'round-the-body' },
  'curved-waist': { drawing: 'waist-from-cone', page: 'curved-waist' },
  wearing: { drawing: 'open-seam' },
  'worn-over': { drawing: 'longer-by' },

  'mock-ups': { drawing: 'pin-and-fold', page: 'mock-up' },
  pinned: { drawing: 'pin-and-fold', page: 'mock-up' },
  noting: { drawing: 'pin-and-fold', page: 'mock-up' },
  fading: { drawing: 'straight-waist', page: 'mock-up' },
  carrying: { page: 'mock-up' },

  'version-now': {},
  versions: { drawing: 'two-laid' },
  'one-version': { drawing: 'two-laid' },
  steps: {},
  'as-traced': { drawing: 'two-laid' },
  'what-was-cut': {},

  'compare-what': { drawing: 'two-laid' },
  'compare-how': { drawing: 'two-laid' },
  'compare-figures': { drawing: 'two-laid' },
  'compare-words': {},

  cloth: { drawing: 'grain-ways', page: 'cloth' },
  'cloth-more': { page: 'cloth' },
  'cut-from-it': { page: 'cloth' },
  strip: { drawing: 'bias-corner', page: 'cloth' },
  'lay-how': { drawing: 'grain-ways', page: 'cloth' },
  places: { page: 'cloth' },
  'lay-sums': { page: 'cloth' },
  beside: { drawing: 'bias-corner', page: 'cloth' },
  'bias-strips': { drawing: 'bias-corner', page: 'cloth' },
  budget: {},
  'lay-plan': { page: 'cloth' },

  pages: { drawing: 'joined-pages', page: 'printing' },
  'paper-size': { page: 'printing' },
  'more-pages': { drawing: 'joined-pages', page: 'printing' },
  proof: { drawing: 'test-square', page: 'printing' },
  printed: { page: 'printing' },
  envelope: { drawing: 'envelope' },
  'drawing-files': {},
  'squares-sheet': { drawing: 'squares-carried', page: 'brown-paper' },
  'screen-paper': { drawing: 'test-square', page: 'printing' },
} as const satisfies Readonly<Record<string, Help>>;

export type HelpName = keyof typeof helps;

export function helpOf(name: HelpName): Help {
  return helps[name];
}

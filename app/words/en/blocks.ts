import type { BlockKind, NoBlock } from '../../../core/blocks/block';
import type { DraftName } from '../../../core/blocks/draft-names';
import type { DraftQuestion } from '../../../core/blocks/draft-question';
import type { GoreRule } from '../../../core/blocks/gore-shares';

const names: Readonly<Record<DraftName, string>> = {
  front: 'Front',
  back: 'Back',
  'side-gore': 'Side gore',
  gore: 'Gore',
  skirt: 'Skirt',
  flounce: 'Flounce',
  band: 'Band',
  'band-with-lap': 'Band with lap',
  leg: 'Leg',
  'bodice-front': 'Bodice front',
  'bodice-back': 'Bodice back',
  'upper-square': 'Square',
  'lower-piece': 'Lower piece',
  'side-seam': 'side seam',
  'shoulder-seam': 'shoulder seam',
  'waist-seam': 'waist seam',
  'gore-seam': 'gore seam',
  'end-seam': 'end seam',
  'inner-leg-seam': 'inner leg',
  'centre-back-seam': 'centre back seam',
  'front-seam': 'front seam',
  'back-seam': 'back seam',
};

const PRINTED = 'with the figures as printed';

/** Words of the drafts from measures. */
export const blockWords = {
  nameOf: (name: DraftName, number?: number) => (number === undefined ? names[name] : `${names[name]} ${number}`),
  kinds: {
    'plain-skirt': 'Plain skirt with darts',
    'two-dart-skirt': 'Two-dart skirt, metric handout',
    'gored-skirt': 'Flared skirt of equal gores',
    'shared-gores': 'Gored skirt by an old rule',
    'five-gored-underskirt': 'Five-gored underskirt, 1911',
    'circle-skirt': 'Circle or part of a circle',
    flounce: 'Circular flounce',
    'shaped-band': 'Shaped band',
    'yoke-drawers': 'Drawers for a yoke, 1911',
    'school-drawers': 'Drawers on a fold, 1910s',
    'childs-drawers': 'Child’s drawers, 1890s',
    'small-drawers': 'Drawers from a small model, 1910',
    'small-underwaist': 'Underwaist from a small model, 1910',
    bloomers: 'Bloomers, 1918',
    bodice: 'Plain bodice with darts',
    slip: 'Slip: bodice and skirt',
    'bias-slip': 'Bias slip, 1930s leaflet',
  } satisfies Record<BlockKind, string>,
  sources: {
    'plain-skirt': 'Darts shared out as is common practice; the waist from the cone of the body.',
    'two-dart-skirt':
      'WikiEducator, Handout for drafting skirt block. Its ease is in it: 2.4 cm (1 in) at the waist, 5 cm (2 in) at the hip.',
    'gored-skirt': 'Two cones, waist to hip and hip to hem.',
    'shared-gores': 'Rules printed 1911 to 1916; see which below.',
    'five-gored-underskirt':
      'Carrie Crane Ingalls, Text-Book on Domestic Art, 1911. The printed draft breaks off in the back gore.',
    'circle-skirt': 'Plain geometry. The cut edge lies inside the stitch line.',
    flounce: 'Laura I. Baldt, Clothing for Women, 1916: radius = top × depth ÷ (bottom − top).',
    'shaped-band': 'The cone of the body between waist and hip.',
    'yoke-drawers': `Carrie Crane Ingalls, 1911, ${PRINTED}.`,
    'school-drawers': `Ida R. and Myron G. Burton, School Sewing, ${PRINTED}.`,
    'childs-drawers': `Olive C. Hapgood, School Needlework, 1890s, ${PRINTED}; only the leg is measured.`,
    'small-drawers': 'Idabelle McGlauflin, Handicraft for Girls, 1910: a small model in whole multiples.',
    'small-underwaist': 'Idabelle McGlauflin, 1910: a small model in whole multiples.',
    bloomers: 'I. Rosenfeld, The Practical Designer, 1918, lesson 411. Its seams are allowed for.',
    bodice: 'Plain geometry from the measures, by common practice.',
    slip: 'The plain bodice and a skirt of gores, joined at the waist or under the bust.',
    'bias-slip':
      'A home-dressmaking leaflet of the 1930s, in one size: four pieces of 27 in (69 cm) and four squares of 15 in (38 cm).',
  } satisfies Record<BlockKind, string>,
  rules: {
    'five-equal': 'five equal gores, 1914',
    'five-proportional': 'five gores in proportion, 1911',
    nine: 'nine gores, 1911',
    'four-panels': 'four panels, 1916',
    'six-panels': 'six panels, 1916',
  } satisfies Record<GoreRule, string>,
  refusal: (refusal: NoBlock) =>
    ({
      'not-positive': 'Every length must be more than nothing. Look at the measures and the figures here.',
      'rise-below-hem': 'The leg must be longer than the rise.',
      'waist-over-hip': 'This draft is not made for a waist wider than the hip. Take the plain skirt or gores.',
      'across-too-wide': 'Across the back or front is too wide for this bust. Measure both again.',
      'bust-below-waist': 'The bust cannot lie below the waist. Look at the bust depth and the waist lengths.',
      'armhole-too-shallow':
        'No armhole is left between shoulder and underarm. Look at the waist lengths and the bust.',
      'dart-too-wide': 'So much would have to go into the darts that they meet. Give more ease at the waist.',
      'waist-too-wide': 'The waist is too wide for the leg of this draft.',
      'side-too-short': 'The side is too short for this draft.',
      'hip-below-hem': 'The hem must lie below the hip.',
      'hip-too-narrow': 'The hip is too narrow for the gores of this draft.',
      'hem-too-wide': 'So wide a hem does not come out of this draft.',
      'share-left-over': 'The fixed parts of this rule take more than there is. Take another rule.',
      'overlaps-itself': 'One part would go more than once round. Cut it in more parts.',
      crosses: 'With these measures an outline would cross itself. Look at the measures again.',
      'too-small': 'That is less than the small model itself.',
    })[refusal.why],
  question: (question: DraftQuestion, length: (mm: number) => string): string => {
    switch (question.kind) {
      case 'sum-clash':
        return `${length(question.asked)} of hem was asked for, the printed gores come to ${length(question.sum)}. Which is to be taken?`;
      case 'length-clash':
        return `From ${question.from} to ${question.to} the source says ${length(question.stated)}; its own points lie ${length(question.drawn)} apart. Which is right?`;
      case 'place-clash':
        return `The source puts ${question.one} and ${question.other} in two places, ${length(question.apart)} apart. Which is right?`;
      case 'edges-differ':
        return `The ${names[question.name]}s of this draft come to ${question.lengths.map(length).join(' and ')}. Which is to be followed?`;
      case 'source-ends':
        return `The source breaks off in the ${names[question.piece].toLowerCase()}, after ${question.last}. How it goes on is for you to say.`;
      case 'figure-missing':
        return `A figure is missing in the source (${missingWords[question.what]}). Look at the edge before you cut.`;
      case 'size-stepped':
        return `${length(question.asked)} was asked for. This draft comes in whole steps; the nearest is ${length(question.made)}.`;
      case 'no-bust-dart':
        return `The front, ${length(question.front)}, is hardly longer than the back, ${length(question.back)}, so there is no bust dart. Are both measured over the bust?`;
      case 'bust-dart-off':
        return `The bust lies too near the underarm or waist: its dart lies ${length(question.by)} off it.`;
    }
  },
  block: 'Which draft',
  as: 'Put it down as',
  ases: { pieces: 'pieces to work on', guide: 'a guide to lay under a draft' },
  label: 'draft a base pattern',
  missing: (fields: string) =>
    `This draft needs measures that are not taken yet: ${fields}. They are taken in the Wearer room.`,
  length: 'Length, waist to hem',
  hem: 'Hem, all round',
  gores: 'How many gores',
  easeWaist: 'Ease at the waist',
  easeHip: 'Ease at the hip',
  easeBust: 'Ease at the bust',
  rule: 'Rule',
  hemTaken: 'The hem of the printed gores',
  hemTakens: { 'as-asked': 'as asked', 'as-printed': 'as printed' },
  offFloor: 'The hem off the floor',
  share: 'How much of a circle',
  shares: { '1': 'full', '0.75': 'three quarters', '0.5': 'half', '0.25': 'a quarter' },
  sections: 'Cut in how many parts',
  top: 'Upper edge, all round',
  bottom: 'Lower edge, all round',
  depth: 'Depth',
  side: 'Side, waist to hem of the leg',
  leg: 'Leg',
  underarm: 'Underarm seam',
  outside: 'Outside length',
  opens: 'Opens down the',
  openings: { back: 'back', front: 'front' },
  joined: 'Bodice and skirt meet',
  joins: { waist: 'at the waist', underbust: 'under the bust' },
} as const;

const missingWords: Readonly<Record<Extract<DraftQuestion, { kind: 'figure-missing' }>['what'], string>> = {
  direction: 'a direction that only the plate shows',
  'waist-curve': 'the curve of the waist',
  fractions: 'fractions lost in the copy',
  'one-figure-of-a-range': 'a range instead of one figure',
  axes: 'the directions of its lines',
  'side-gores': 'the side gores',
};

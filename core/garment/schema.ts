import * as z from 'zod/mini';
import { brokenReference } from './broken-reference';
import { type Garment, SCHEMA } from './garment';
import { GIRTHS, LENGTHS, MEASURES } from './measure';
import { CORNER_FINISHES, EDGE_ROLES } from './piece';
import { PAPER_SIZES } from './sheet-choice';

// Schemas must not build code from strings: the page's policy forbids it.
z.config({ jitless: true });

/** Nothing on a drafting table is further off than a kilometre. */
const FAR = 1e6;
const length = z.number().check(z.minimum(-FAR), z.maximum(FAR));
const positive = z.number().check(z.positive(), z.maximum(FAR));
const notNegative = z.number().check(z.minimum(0), z.maximum(FAR));
const id = z.string().check(z.minLength(1), z.maxLength(64));
const words = z.string().check(z.maxLength(10_000));
const date = z.iso.date();
const point = z.strictObject({ x: length, y: length });
const list = <Item extends z.ZodMiniType>(item: Item, most: number) => z.array(item).check(z.maxLength(most));

const measure = z.strictObject({
  length: positive,
  right: z.exactOptional(positive),
  depth: z.exactOptional(notNegative),
  guessed: z.exactOptional(z.literal(true)),
});
const measureSet = z.strictObject({ id, date, wornOver: words, measures: z.partialRecord(z.enum(MEASURES), measure) });
const wearer = z.strictObject({ name: words, sets: list(measureSet, 200), currentSetId: id });

const stated = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('length'), length }),
  z.strictObject({
    kind: z.literal('share'),
    measure: z.enum(MEASURES),
    parts: positive,
    of: positive,
    ease: length,
  }),
  z.strictObject({ kind: z.literal('bar'), intervals: z.int().check(z.minimum(1), z.maximum(1000)), each: positive }),
]);
const figure = z.number();
const projective = z.tuple([figure, figure, figure, figure, figure, figure, figure, figure, figure]);
const shifts = list(figure, 45);
/** A side of degree 9 passes through eight places. */
const places = list(point, 8);
/** Of things that are counted on, such as versions, from 1. */
const number = z.int().check(z.minimum(1), z.maximum(1e6));
const count = z.int().check(z.minimum(0), z.maximum(10_000));
const through = z.tuple([places, places, places, places]);
const followed = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('sides'), through }),
  z.strictObject({
    kind: z.literal('squares'),
    map: z.strictObject({
      kind: z.literal('squares-map'),
      columns: count,
      rows: count,
      toPhoto: projective,
      toSquares: projective,
      degree: z.int().check(z.minimum(0), z.maximum(8)),
      shiftX: shifts,
      shiftY: shifts,
      rms: notNegative,
      worst: notNegative,
      leftOut: count,
    }),
  }),
]);
const squareUp = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('flat') }),
  z.strictObject({
    kind: z.literal('rectangle'),
    corners: z.tuple([point, point, point, point]),
    sides: z.discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('not-known') }),
      z.strictObject({ kind: z.literal('ratio'), across: positive, down: positive }),
    ]),
    followed: z.exactOptional(followed),
  }),
]);
const diagram = z.strictObject({
  id,
  name: words,
  photoId: id,
  widthPx: positive,
  heightPx: positive,
  onPaper: z.exactOptional(z.strictObject({ across: positive, down: positive })),
  focalPx: z.exactOptional(positive),
  seen: z.exactOptional(list(z.strictObject({ corners: z.tuple([point, point, point, point]), through }), 8)),
  ruled: z.exactOptional(
    list(z.strictObject({ id, places: list(point, 200).check(z.minLength(2)), squareTo: z.exactOptional(id) }), 40),
  ),
  squareUp,
  quarterTurns: z.union([z.literal(0), z.literal(1), z.literal(2), z.literal(3)]),
  knownLengths: list(z.strictObject({ id, from: point, to: point, says: stated }), 200),
  scaleFrom: z.exactOptional(z.strictObject({ diagramId: id, by: z.enum(['paper', 'rectangle', 'pixel']) })),
  joined: z.exactOptional(
    z.strictObject({
      diagramId: id,
      pairs: list(z.strictObject({ here: point, there: point }), 50),
      size: z.enum(['fitted', 'own']),
    }),
  ),
  placedAt: point,
});

const endRule = z.enum(['free', 'square', 'in-line']);
const edge = z.strictObject({
  id,
  name: words,
  role: z.enum(EDGE_ROLES),
  shape: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('straight') }),
    z.strictObject({ kind: z.literal('curve'), through: list(point, 2000), leaves: endRule, meets: endRule }),
  ]),
  stated: z.exactOptional(z.strictObject({ length: positive, rules: z.enum(['unsettled', 'drawing', 'figure']) })),
  allowance: z.exactOptional(notNegative),
});
const corner = z.strictObject({ id, at: point, finish: z.exactOptional(z.enum(CORNER_FINISHES)) });
const fullness = z.discriminatedUnion('kind', [
  z.strictObject({ id, edgeId: id, kind: z.literal('gathers'), from: length, to: length, into: notNegative }),
  z.strictObject({
    id,
    edgeId: id,
    kind: z.literal('pleat'),
    from: length,
    takes: notNegative,
    laid: z.enum(['to-start', 'to-end', 'inverted', 'box']),
  }),
]);
const piece = z.strictObject({
  id,
  name: words,
  cut: z.strictObject({ how: z.enum(['fold', 'pair', 'single']), count: z.int().check(z.minimum(1), z.maximum(1000)) }),
  drawnAs: z.enum(['net', 'included', 'not-known']),
  corners: list(corner, 2000).check(z.minLength(2)),
  edges: list(edge, 2000),
  darts: list(z.strictObject({ id, edgeId: id, along: length, width: notNegative, point }), 200),
  notches: list(
    z.strictObject({ id, edgeId: id, along: length, count: z.union([z.literal(1), z.literal(2), z.literal(3)]) }),
    500,
  ),
  labels: list(z.strictObject({ id, at: point, text: words }), 500),
  grain: z.exactOptional(z.strictObject({ from: point, to: point })),
  fullness: z.exactOptional(list(fullness, 500)),
  side: z.exactOptional(z.enum(['left', 'right'])),
  use: z.exactOptional(z.literal('guide')),
  diagramId: z.exactOptional(id),
  remarks: words,
});

const level = z.strictObject({
  id,
  name: z.exactOptional(words),
  girth: z.enum(GIRTHS),
  body: z.exactOptional(positive),
  depth: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('measure'), measure: z.enum(LENGTHS) }),
    z.strictObject({ kind: z.literal('length'), length }),
  ]),
  ease: length,
});
const ring = z.strictObject({
  id,
  name: words,
  members: list(
    z.strictObject({
      pieceId: id,
      times: z.exactOptional(notNegative),
      from: z.exactOptional(z.strictObject({ edgeId: id, depth: length })),
    }),
    500,
  ),
  levels: list(level, 100),
});

const seamEdges = list(z.strictObject({ pieceId: id, edgeId: id, times: z.exactOptional(notNegative) }), 100);
const seam = z.strictObject({
  id,
  name: words,
  one: seamEdges.check(z.minLength(1)),
  other: seamEdges.check(z.minLength(1)),
  ease: length,
  lap: z.exactOptional(
    z.strictObject({ side: z.enum(['one', 'other']), length: positive, at: z.enum(['start', 'end']) }),
  ),
  way: z.enum(['opposite', 'same']),
});

const edgeRef = z.strictObject({ pieceId: id, edgeId: id });
const pinnedWhat = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('edge'),
    edge: edgeRef,
    pins: list(z.strictObject({ along: length, by: length }), 100),
    from: z.exactOptional(length),
    to: z.exactOptional(length),
    share: z.number().check(z.minimum(0), z.maximum(1)),
    edgeLength: z.exactOptional(positive),
  }),
  z.strictObject({
    kind: z.literal('length'),
    pieceIds: list(id, 500),
    at: z.discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('hem') }),
      z.strictObject({ kind: z.literal('depth'), depth: length }),
    ]),
    by: length,
  }),
  z.strictObject({
    kind: z.literal('point'),
    pieceId: id,
    cornerId: id,
    by: z.strictObject({ dx: length, dy: length }),
  }),
]);
const pinnedChange = z.strictObject({
  id,
  what: pinnedWhat,
  side: z.enum(['both', 'left', 'right']),
  note: words,
  photoId: z.exactOptional(id),
  state: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('noted') }),
    z.strictObject({ kind: z.literal('carried'), date }),
    z.strictObject({ kind: z.literal('declined'), date, reason: words }),
  ]),
});
const mockup = z.strictObject({
  id,
  name: words,
  made: date,
  version: number,
  mark: words,
  note: words,
  pinned: list(pinnedChange, 500),
});
const sides = z.strictObject({ top: notNegative, right: notNegative, bottom: notNegative, left: notNegative });
const paper = {
  size: z.enum(PAPER_SIZES),
  turned: z.enum(['upright', 'sideways']),
  margin: notNegative,
  overlap: notNegative,
  joins: z.exactOptional(z.literal('butted')),
  rollWidth: z.exactOptional(positive),
};
/** Milliseconds since 1970, up to the year 5138: what is much later is no date any more, and cannot be written as one. */
const time = z.int().check(z.minimum(0), z.maximum(1e14));
const laid = z.strictObject({
  pieceId: id,
  name: words,
  paper: z.strictObject({ ...paper, rollLength: z.exactOptional(positive), margins: z.exactOptional(sides) }),
  origin: point,
  motion: z.exactOptional(z.strictObject({ angle: z.number(), dx: z.number(), dy: z.number() })),
  together: z.exactOptional(words),
  names: z.exactOptional(list(words, 2000)),
  corners: list(z.strictObject({ id, at: point }), 2000),
  joins: list(
    z.strictObject({ over: words, under: words, marks: list(z.strictObject({ at: point, mark: words }), 10) }),
    4000,
  ),
  number,
  of: number,
  mends: z.exactOptional(z.strictObject({ printingId: id, gone: list(words, 2000) })),
});
const printing = z.strictObject({
  id,
  date,
  version: z.exactOptional(number),
  mark: words,
  pages: list(z.strictObject({ name: words, pieceIds: list(id, 500), mark: words }), 2000),
  laid: z.exactOptional(list(laid, 500)),
  squares: z.exactOptional(list(z.strictObject({ pieceId: id, name: words, mark: words }), 500)),
  unused: z.exactOptional(date),
});
const cutting = z.strictObject({
  id,
  date,
  version: number,
  from: z.enum(['mock-up', 'cloth']),
  pieces: list(z.strictObject({ pieceId: id, mark: words }), 500),
});

const outline = list(point, 500).check(z.minLength(3));
const share = z.number().check(z.minimum(0), z.maximum(0.9));
const cloth = z.strictObject({
  id,
  name: words,
  width: positive,
  selvedge: notNegative,
  atHand: z.exactOptional(positive),
  folded: z.enum(['open', 'lengthwise', 'crosswise']),
  nap: z.enum(['none', 'one-way']),
  repeat: z.exactOptional(z.strictObject({ along: notNegative, across: notNegative })),
  flaws: list(outline, 100),
  shape: z.exactOptional(outline),
  pieceIds: z.exactOptional(list(id, 500)),
  strips: list(
    z.strictObject({
      id,
      name: words,
      length: positive,
      width: positive,
      count: z.int().check(z.minimum(1), z.maximum(1000)),
      cut: z.enum(['along', 'across', 'bias']),
    }),
    100,
  ),
  grain: z.enum(['straight', 'cross', 'bias']),
  tilt: z.exactOptional(z.number().check(z.minimum(0), z.maximum(0.2))),
  pieced: z.exactOptional(list(z.strictObject({ id, at: length, allowance: notNegative }), 500)),
  openedOut: z.exactOptional(z.literal(true)),
  shrinks: z.exactOptional(z.strictObject({ along: share, across: share })),
  price: z.exactOptional(z.strictObject({ each: notNegative, per: z.enum(['yard', 'metre']), in: words })),
});
/** The id of what is laid: a piece's, or that of its other hand. */
const laidId = z.string().check(z.minLength(1), z.maxLength(100));
const lay = z.strictObject({
  clothId: id,
  made: date,
  version: z.exactOptional(number),
  length: notNegative,
  placed: list(
    z.strictObject({
      id: laidId,
      copy: z.int().check(z.minimum(0), z.maximum(1e6)),
      stance: z.int().check(z.minimum(0), z.maximum(1e6)),
      at: point,
      pinned: z.exactOptional(z.literal(true)),
    }),
    5000,
  ),
  clothMark: words,
  marks: list(z.strictObject({ id: laidId, mark: words }), 1000),
});

/** No printer stretches so far; a hand-written file must not fold a page up to nothing. */
const factor = z.number().check(z.minimum(0.9), z.maximum(1.1));
const printer = z.strictObject({ across: factor, down: factor });
const squaresChoice = z.strictObject({
  square: z.exactOptional(positive),
  from: z.exactOptional(z.enum(['zero', 'base-line'])),
  base: z.exactOptional(list(z.strictObject({ pieceId: id, edgeId: id }), 500)),
  print: z.exactOptional(z.enum(['usual', 'large'])),
});

const whole = z.strictObject({
  id,
  name: words,
  length: positive,
  edges: list(z.strictObject({ pieceId: id, edgeId: id }), 500),
  counted: z.exactOptional(z.literal('in-garment')),
  rules: z.enum(['unsettled', 'parts', 'whole']),
});

const shape = z.strictObject({
  schema: z.literal(SCHEMA),
  id,
  name: words,
  made: date,
  shownIn: z.enum(['in', 'cm']),
  source: z.strictObject({ book: words, page: words, plate: words, year: words, remarks: words }),
  remarks: words,
  wearer,
  diagrams: list(diagram, 100),
  pieces: list(piece, 500),
  rings: list(ring, 50),
  seams: z.exactOptional(list(seam, 500)),
  wholes: z.exactOptional(list(whole, 200)),
  outer: z.exactOptional(
    z.strictObject({
      front: z.exactOptional(positive),
      side: z.exactOptional(positive),
      back: z.exactOptional(positive),
      shorterBy: length,
    }),
  ),
  traced: z.exactOptional(list(piece, 500)),
  tracedLate: z.exactOptional(list(z.strictObject({ pieceId: id, since: time }), 500)),
  steps: z.exactOptional(list(z.strictObject({ label: words, time, pieceIds: list(id, 500) }), 1000)),
  drawnFrom: z.exactOptional(z.strictObject({ version: number, newest: number })),
  mockups: z.exactOptional(list(mockup, 200)),
  printings: z.exactOptional(list(printing, 500)),
  cuttings: z.exactOptional(list(cutting, 500)),
  knowingly: z.exactOptional(list(z.strictObject({ finding: words, date, why: words }), 500)),
  cloths: z.exactOptional(list(cloth, 50)),
  lays: z.exactOptional(list(lay, 50)),
  cloth: z.exactOptional(words),
  notions: z.exactOptional(words),
  coverPhotoId: z.exactOptional(id),
  paper: z.strictObject({
    ...paper,
    step: z.enum(['sixteenth', 'eighth', 'millimetre']),
    loses: z.exactOptional(notNegative),
    losesAt: z.exactOptional(sides),
    placed: z.exactOptional(z.literal('as-drawn')),
    squaresOver: z.exactOptional(z.enum(['inch', 'centimetre'])),
    printer: z.exactOptional(printer),
    squares: z.exactOptional(squaresChoice),
  }),
  scaleProof: z.exactOptional(
    z.strictObject({
      date,
      across: positive,
      down: positive,
      wanted: z.exactOptional(z.strictObject({ across: positive, down: positive })),
      on: z.exactOptional(z.strictObject({ size: z.enum(PAPER_SIZES), printer: z.exactOptional(printer) })),
    }),
  ),
});

export type GarmentReading = { readonly kind: 'garment'; readonly garment: Garment } | NotAGarment;

/** `where` names the field, as in `pieces.0.edges.2.role`. */
export interface NotAGarment {
  readonly kind: 'not-a-garment';
  readonly where: string;
  /** A value that may not stand there, a field this program does not know, one id for two things, or a loose reference. */
  readonly why: 'value' | 'unknown-field' | 'same-id' | 'loose-end';
}

/** A place where a value is not of the present shape: fields there that are `unknown`, or else something wrong with it. */
export interface Misfit {
  readonly path: readonly (string | number)[];
  readonly unknown: readonly string[];
}

/** Every place where a value is not of the present shape; references are not looked into. */
export function misfits(value: unknown): readonly Misfit[] {
  const read = shape.safeParse(value);
  if (read.success) return [];
  return read.error.issues.map((issue) => ({
    path: issue.path.filter((part) => typeof part !== 'symbol'),
    unknown: issue.code === 'unrecognized_keys' ? issue.keys : [],
  }));
}

/** Checks a value from outside against the present shape: every field, every number finite, every reference met. */
export function readGarment(value: unknown): GarmentReading {
  const read = shape.safeParse(value);
  if (!read.success) {
    const [issue] = read.error.issues;
    const why = issue?.code === 'unrecognized_keys' ? 'unknown-field' : 'value';
    return { kind: 'not-a-garment', where: issue?.path.join('.') ?? '', why };
  }
  const garment: Garment = read.data;
  const broken = brokenReference(garment);
  return broken ? { kind: 'not-a-garment', ...broken } : { kind: 'garment', garment };
}

/**
 * The compiler refuses this file when the schema and the written types are no longer one: a field that only one of them
 * knows, or of another type, or which only one lets be missing. `place` marks points for the compiler alone.
 */
type Plain<T> = T extends readonly unknown[]
  ? { readonly [K in keyof T]: Plain<T[K]> }
  : T extends object
    ? { readonly [K in keyof T as Exclude<K, 'place'>]: Plain<T[K]> }
    : T;
type Full<T> = T extends readonly unknown[]
  ? { readonly [K in keyof T]: Full<T[K]> }
  : T extends object
    ? { readonly [K in keyof T]-?: Full<T[K]> }
    : T;
type Fits<Is, Wanted> = [Is] extends [Wanted] ? true : false;
type Read = Plain<z.output<typeof shape>>;
type Written = Plain<Garment>;
true satisfies Fits<Read, Written>;
true satisfies Fits<Written, Read>;
true satisfies Fits<Full<Read>, Full<Written>>;
true satisfies Fits<Full<Written>, Full<Read>>;

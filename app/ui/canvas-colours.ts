/** The colours of tokens.css that a canvas is painted with, by the names they have in scripts. */
const TOKENS = {
  paper: '--paper',
  sheet: '--sheet',
  cloth: '--cloth',
  clothDeep: '--cloth-deep',
  ink: '--ink',
  inkSoft: '--ink-soft',
  chalk: '--chalk',
  chalkDeep: '--chalk-deep',
  chalkPale: '--chalk-pale',
  wrong: '--wrong',
} as const;

export type ColourName = keyof typeof TOKENS;
type Colours = Readonly<Record<ColourName, string>>;

const NAMES = Object.keys(TOKENS) as readonly ColourName[];

let shown: Colours | undefined;

/** A colour as it is shown now. Ask for it while painting: in another light it is another. */
export const canvasColours = Object.defineProperties(
  {},
  Object.fromEntries(NAMES.map((name) => [name, { enumerable: true, get: () => nowShown()[name] }])),
) as Colours;

/** The same colour for a drawing in the page, which follows the light by itself. */
export function colourToken(name: ColourName): string {
  return `var(${TOKENS[name]})`;
}

/** The page's colours have changed, and are read afresh when next painted with. */
export function forgetColours(): void {
  shown = undefined;
}

/** Paints with the colours of daylight, for pictures that are kept. */
export function inDaylight<Result>(paint: () => Result): Result {
  const root = document.documentElement;
  const { look } = root.dataset;
  root.dataset.look = 'light';
  shown = undefined;
  try {
    return paint();
  } finally {
    if (look !== undefined) root.dataset.look = look;
    shown = undefined;
  }
}

function nowShown(): Colours {
  if (!shown) {
    const style = getComputedStyle(document.documentElement);
    const read = NAMES.map((name) => [name, style.getPropertyValue(TOKENS[name]).trim()]);
    shown = Object.fromEntries(read) as Record<ColourName, string>;
  }
  return shown;
}

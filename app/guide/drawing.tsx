import type { DrawingName } from '../words/guide/how-to';
import styles from './guide.module.css';

interface Sketch {
  /** What is there. */
  readonly ink: string;
  /** What is done to it, or looked for. */
  readonly chalk?: string;
  /** Lines that are only thought of. */
  readonly thought?: string;
  /** Figures, each with the middle of its foot. */
  readonly figures?: readonly (readonly [words: string, x: number, y: number])[];
}

const BODY = 'M47 4c0 16 0 23-3 31-6 12-8 24-8 41M73 4c0 16 0 23 3 31 6 12 8 24 8 41M60 58v18';
const PANEL = 'M30 12h28c2 20 10 40 22 58-16 4-32 6-50 6z';

/** 120 by 80 each, with the pencil of the icons. */
const sketches: Readonly<Record<DrawingName, Sketch>> = {
  'tape-at-waist': { ink: BODY, chalk: 'M44 35c8 4 24 4 32 0M44 37.5c8 4 24 4 32 0' },
  'level-tape': {
    ink: `${BODY}M100 10h16v62h-16z`,
    chalk: 'M36.5 60c12 5 35 5 47 0M103 60h10',
  },
  'hip-depth': {
    ink: BODY,
    chalk: 'M44 35c8 4 24 4 32 0M36.5 60c12 5 35 5 47 0M92 36v24M89 39l3-3 3 3M89 57l3 3 3-3',
  },
  'camera-square': {
    ink: 'M14 72h92L94 42H26zM24 68h72l-8-22H32zM50 4h20v13H50zM56 10.5a4 4 0 1 0 8 0 4 4 0 1 0-8 0',
    thought: 'M58 18 26 42M62 18l32 24M58 18 14 72M62 18l44 54',
  },
  'page-weights': {
    ink: 'M60 16C48 10 24 10 12 14v52c12-4 36-4 48 2 12-6 36-6 48-2V14C96 10 72 10 60 16zM60 16v52M70 24c8-3 18-4 26-3v32c-8-1-18 0-26 3z',
    chalk: 'M99 15h6v6h-6zM99 58h6v6h-6zM63 61h6v6h-6z',
  },
  'corner-pins': {
    ink: 'M28 14 98 22 90 70 18 62z',
    chalk:
      'M24 14a4 4 0 1 0 8 0 4 4 0 1 0-8 0M94 22a4 4 0 1 0 8 0 4 4 0 1 0-8 0M86 70a4 4 0 1 0 8 0 4 4 0 1 0-8 0M14 62a4 4 0 1 0 8 0 4 4 0 1 0-8 0',
  },
  'known-length': {
    ink: PANEL,
    chalk: 'M30 4v5M58 4v5M30 6.5h28M18 12h5M18 76h5M20.5 12v64',
    figures: [
      ['7', 66, 10],
      ['28', 10, 48],
    ],
  },
  'points-on-curve': {
    ink: 'M22 10c30 4 50 20 72 62',
    chalk:
      'M18 10a4 4 0 1 0 8 0 4 4 0 1 0-8 0M48 18.5a3 3 0 1 0 6 0 3 3 0 1 0-6 0M72 42a3 3 0 1 0 6 0 3 3 0 1 0-6 0M90 72a4 4 0 1 0 8 0 4 4 0 1 0-8 0',
  },
  'half-on-fold': {
    ink: 'M60 12h18c2 20 8 40 18 56-12 4-24 6-36 6z',
    thought: 'M60 12H42C40 32 34 52 24 68c12 4 24 6 36 6',
    chalk: 'M60 6v74',
  },
  'straight-waist': { ink: 'M26 26h52c4 18 8 32 16 48H26z', chalk: 'M26 26c20 0 38-4 50-14' },
  'waist-from-cone': {
    ink: 'M18 18c4-4 20-4 24 0l10 48c-8 8-36 8-44 0zM18 18c4 4 20 4 24 0',
    chalk: 'M76 24c10 6 22 6 32 0l10 42c-16 12-36 12-52 0z',
    thought: 'M54 40h12M62 36l4 4-4 4',
  },
  'pin-and-fold': {
    ink: 'M14 24c24 0 34 2 40 6v-22M14 30c24 0 36 2 46 6v-28M106 24c-24 0-34 2-40 6',
    chalk: 'M44 16h32M76 16a2.5 2.5 0 1 0 5 0 2.5 2.5 0 1 0-5 0',
    thought: 'M14 62h92M60 56v12',
  },
  'grain-ways': {
    ink: 'M12 12h96M12 16h96M12 64h96M12 68h96',
    chalk: 'M20 26h40M56 23l4 3-4 3M80 24v32M77 28l3-4 3 4M77 52l3 4 3-4M26 56l22-22M42 34h6v6',
  },
  'bias-corner': {
    ink: 'M12 14h96v52H60L12 14M60 66 12 66',
    thought: 'M12 14v52',
    chalk: 'M12 14l48 52',
  },
  'test-square': {
    ink: 'M34 4h56v72H34zM46 22h28v28H46z',
    chalk: 'M40 54h42v8H40zM46 54v4M53 54v3M60 54v4M67 54v3M74 54v4',
    figures: [['4', 60, 40]],
  },
  'joined-pages': {
    ink: 'M12 12h50v58H12zM62 12h46v58H62',
    chalk: 'M58 28h8M62 24v8M58 54h8M62 50v8',
    thought: 'M20 22c30 6 50 24 78 40',
  },
  'squares-carried': {
    ink: 'M24 12h84M24 30h84M24 48h84M24 66h84M24 12v60M42 12v60M60 12v60M78 12v60M96 12v60',
    chalk: 'M24 12h45M69 12v38M65 50a4 4 0 1 0 8 0 4 4 0 1 0-8 0',
  },
  'longer-by': {
    ink: 'M38 6h26c2 12 5 24 9 34H38zM38 52h39c2 8 4 14 7 20-14 4-30 5-46 5z',
    chalk: 'M24 40v12M21 43l3-3 3 3M21 49l3 3 3-3',
    thought: 'M30 40h52M30 52h56',
  },
  'round-the-body': {
    ink: 'M60 14c22 0 38 10 38 24S82 62 60 62 22 52 22 38 38 14 60 14z',
    chalk: 'M60 20c18 0 31 7 31 18S78 56 60 56M60 20c-18 0-31 7-31 18 0 6 4 11 11 14',
    thought: 'M60 8v12M60 56v12M16 38h13M91 38h13',
  },
  'cut-line': {
    ink: 'M34 18h22c2 18 8 34 18 48-14 3-26 4-40 4z',
    chalk: 'M34 12h28c2 18 8 34 20 50l4 10c-18 4-34 6-52 6z',
  },
  'two-laid': {
    ink: PANEL,
    chalk: 'M30 8h24c3 22 14 44 28 58-16 6-34 8-52 8z',
    thought: 'M92 12h16M92 20h16M92 28h10',
  },
  envelope: {
    ink: 'M16 22h88v48H16zM16 22l20-14h48l20 14',
    chalk: 'M30 32h10c1 10 5 20 10 28-7 2-13 2-20 2z',
    thought: 'M62 38h32M62 46h32M62 54h20',
  },
  'dart-legs': {
    ink: 'M14 14h38M68 14h38M52 14l8 46 8-46',
    chalk: 'M52 9h16M54.5 6.5 52 9l2.5 2.5M65.5 6.5 68 9l-2.5 2.5',
    thought: 'M60 14v46',
  },
  'slash-spread': {
    ink: 'M30 14h24l4 52c-10 4-22 5-34 4zM54 14h14c4 18 12 34 24 44-8 5-16 7-22 8z',
    chalk: 'M60 70c4 0 7-1 9-2M54 10v8M51 14h6',
  },
  'notches-meet': {
    ink: 'M14 30h92M14 50h92',
    chalk: 'M42 30v-8M42 50v8M78 30v-8M78 50v8',
    thought: 'M42 33v14M78 33v14M10 30v20',
  },
  'walked-seam': {
    ink: 'M20 14c10 16 16 34 18 54M62 14c4 8 7 14 9 21',
    chalk: 'M46 12c4 18 10 36 28 50M38 44h6M41 41l3 3-3 3',
    thought: 'M20 14l26-2M38 68h14',
  },
  'open-seam': {
    ink: 'M34 14h22M64 14h22M24 70h72M34 14 24 70M86 14l10 56M60 40v30',
    chalk: 'M56 14c1 10 2 18 4 26M64 14c-1 10-2 18-4 26',
    thought: 'M44 8c8-5 24-5 32 0',
  },
  'three-four-five': {
    ink: 'M28 10v54h72M28 56h8v8',
    chalk: 'M28 10l72 54',
    figures: [
      ['3', 18, 42],
      ['4', 64, 77],
      ['5', 72, 32],
    ],
  },
};

/** A small drawing beside a step; the step says the same in words. */
export function Drawing({ name }: { readonly name: DrawingName }) {
  const { ink, chalk, thought, figures = [] } = sketches[name];
  return (
    <svg className={styles.drawing} viewBox="0 0 120 80" aria-hidden="true" focusable="false">
      <path data-part="ink" d={ink} />
      {thought && <path data-part="thought" d={thought} />}
      {chalk && <path data-part="chalk" d={chalk} />}
      {figures.map(([words, x, y]) => (
        <text key={words} x={x} y={y} textAnchor="middle">
          {words}
        </text>
      ))}
    </svg>
  );
}

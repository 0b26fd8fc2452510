import styles from './icon.module.css';

/** One family, drawn as with a blunt pencil on squared paper: 20 by 20, lines of 1.6, round ends. */
const drawings = {
  piece: 'M5 3h7c0 2 2 3 3 3l2 11H3z',
  corner: 'M4 16V4h12M2.5 2.5h3v3h-3z',
  curve: 'M3 16C4 8 9 4 17 4M8 6.5a1.6 1.6 0 1 0 3.2 0 1.6 1.6 0 1 0-3.2 0',
  straight: 'M4 16 16 4M2.5 17.5l3-3M14.5 5.5l3-3',
  notch: 'M2 14h5l3-7 3 7h5',
  dart: 'M3 4h4l3 12 3-12h4M10 9v3',
  grain: 'M10 2v16M7 5l3-3 3 3M7 15l3 3 3-3',
  label: 'M3 6h14v8H3zM6 9h8M6 11.5h5',
  pin: 'M12 3a2.5 2.5 0 1 1 0 .1M10.8 5.7 4 17',
  square: 'M3 3h14v14H3zM3 10h14M10 3v14',
  fold: 'M5 3v14M9 5v10M9 5h7M9 15h7M13 8l3-3M13 12l3 3',
  ruler: 'M2 13 13 2l5 5L7 18zM6 9l2 2M9 6l3 3M12.5 4.5l1.5 1.5',
  plus: 'M10 4v12M4 10h12',
  minus: 'M4 10h12',
  bin: 'M4 6h12M8 6V3.5h4V6M5.5 6l1 11h7l1-11M8.5 9v5M11.5 9v5',
  undo: 'M7 4 3 8l4 4M3 8h9a4.5 4.5 0 0 1 0 9H8',
  redo: 'M13 4l4 4-4 4M17 8H8a4.5 4.5 0 0 0 0 9h4',
  fit: 'M3 7V3h4M13 3h4v4M17 13v4h-4M7 17H3v-4M7 7h6v6H7z',
  'fit-piece': 'M3 7V3h4M13 3h4v4M17 13v4h-4M7 17H3v-4M7 6h4c0 1.4 1 2 2 2l1 6H6z',
  width: 'M3 3v14M17 3v14M6 10h8M8.5 7.5 6 10l2.5 2.5M11.5 7.5 14 10l-2.5 2.5',
  back: 'M3 7V3h4M3 13v4h4M17 10H8M11 7l-3 3 3 3',
  eye: 'M2 10c3-5 13-5 16 0-3 5-13 5-16 0zM7.8 10a2.2 2.2 0 1 0 4.4 0 2.2 2.2 0 1 0-4.4 0',
  hand: 'M5 10V5.5M8 9V3M11 9V3M14 10V5M5 10c0 4 2 7 5 7s4-3 4-7v-1M5 11 3 9',
  look: 'M10 3v9M10 15.5v.1',
  done: 'M3 11l4.5 4.5L17 5',
  picture: 'M3 4h14v12H3zM5 14l4-5 3 3 2-2 2 4M13 7v.1',
  turn: 'M15 9a6 6 0 1 1-2-4.5M13 1.5v3.2h-3.2',
  camera: 'M3 6h3l1.5-2h5L14 6h3v10H3zM7 11a3 3 0 1 0 6 0 3 3 0 1 0-6 0',
  page: 'M5 2.5h7l3 3v12H5zM12 2.5v3h3M7.5 9h5M7.5 12h5',
  save: 'M10 3v10M6 9l4 4 4-4M3 14v3h14v-3',
  open: 'M10 13V3M6 7l4-4 4 4M3 14v3h14v-3',
  shelf: 'M3 3v14M17 3v14M3 9h14M3 15h14M6 9V5h3v4M11 9V4h2v5M7 15v-3h5v3',
  copy: 'M3 6h9v11H3zM7 6V3h10v11h-5',
  mirror: 'M10 2v16M7 5 3 15h4zM13 5l4 10h-4z',
  figure: 'M7.8 4.5a2.2 2.2 0 1 0 4.4 0 2.2 2.2 0 1 0-4.4 0M6 17l2-7h4l2 7zM8 10 5 12M12 10l3 2',
  up: 'M10 16V4M5 9l5-5 5 5',
  down: 'M10 4v12M5 11l5 5 5-5',
  left: 'M16 10H4M9 5l-5 5 5 5',
  right: 'M4 10h12M11 5l5 5-5 5',
  more: 'M3 10a1 1 0 1 0 2 0 1 1 0 1 0-2 0M9 10a1 1 0 1 0 2 0 1 1 0 1 0-2 0M15 10a1 1 0 1 0 2 0 1 1 0 1 0-2 0',
  book: 'M10 5C8 3.5 5 3 2.5 3.5v12C5 15 8 15.5 10 17c2-1.5 5-2 7.5-1.5v-12C15 3 12 3.5 10 5zM10 5v12',
  close: 'M5 5l10 10M15 5 5 15',
  ask: 'M6.5 7.2a3.5 3.5 0 1 1 5.3 3c-1.2.8-1.8 1.4-1.8 2.6M10 16v.1',
} as const;

export type IconName = keyof typeof drawings;

/** A small drawing beside words, never instead of a name. */
export function Icon({ name }: { readonly name: IconName }) {
  return (
    <svg className={styles.icon} viewBox="0 0 20 20" aria-hidden="true" focusable="false">
      <path d={drawings[name]} />
    </svg>
  );
}

/** A place in pixels of a picture. */
type Place = readonly [x: number, y: number];

/** One outline of a real picture: by the names of its corners in `diagrams.json`, or by places read by eye, to 3 pixels. */
export type ChosenOutline =
  | { readonly id: string; readonly corners: string }
  | { readonly id: string; readonly file: string; readonly places: readonly Place[] };

/** D11 needs a press in its armhole; X04 presses along its arcs, whose shorter way round is dashed; X06 is traced within its hatched hem. */
export const OUTLINES: readonly ChosenOutline[] = [
  { id: 'D01', corners: 'bk_top t12 b32 b42' },
  { id: 'D02', corners: 'p1TL p1TR p1BR p1BL' },
  { id: 'D03', corners: 'fold_waist front_waist crotch leg_top leg_hem BL' },
  { id: 'D04', corners: 'l2top v6top v6bot l2bot' },
  { id: 'D06', corners: 'A_TL A_TR A_BR A_BL' },
  { id: 'D07', corners: 'P2a P2b P2c P2d' },
  { id: 'D08', corners: 'P2a P2b P2c P2d' },
  { id: 'D10', corners: 'G1a G1b G1c G1d' },
  { id: 'D11', corners: 'f_neckCF f_neckSh f_sh f_chest f_ua f_hem fBL' },
  { id: 'D12', corners: 'B C F G Z A' },
  { id: 'D14', corners: 'TL TR BR BL' },
  { id: 'D16', corners: 'topR sleeveTR sleeveBR underarmR hemR tipL' },
  { id: 'D17', corners: 'TL TR BR BL' },
  { id: 'D18', corners: 'TL TR BR BL' },
  { id: 'D19', corners: 't3TL t3TR t3BR t3BL' },
  {
    id: 'X01',
    file: 'extra/X01_houston1920_fig22a_4inch_grid.jpg',
    places: [
      [97, 60],
      [517, 63],
      [490, 236],
      [128, 236],
    ],
  },
  {
    id: 'X03',
    file: 'extra/X03_houston1920_fig46_coat_dimensions_conflict.jpg',
    places: [
      [36, 84],
      [330, 85],
      [288, 171],
      [35, 170],
    ],
  },
  {
    id: 'X04',
    file: 'extra/X04_houston1920_fig11c_ring_collar.jpg',
    places: [
      [113, 65],
      [25, 270],
      [230, 462],
      [460, 250],
      [395, 86],
      [278, 190],
      [305, 240],
      [243, 305],
      [178, 240],
      [217, 188],
    ],
  },
  {
    id: 'X06',
    file: 'extra/X06_hands1907_dalmatic_handlettered.jpg',
    places: [
      [50, 77],
      [311, 77],
      [311, 592],
      [139, 592],
      [163, 383],
      [177, 212],
      [50, 227],
    ],
  },
  {
    id: 'X08',
    file: 'extra/X08_fryer1913_insert4_overlapping_onebit.png',
    places: [
      [83, 157],
      [151, 156],
      [150, 310],
      [84, 310],
    ],
  },
  {
    id: 'X10',
    file: 'extra/X10_hertzer1892_dia19_trousers_brown_page.jpg',
    places: [
      [163, 8],
      [318, 97],
      [259, 261],
      [115, 245],
      [118, 150],
    ],
  },
  {
    id: 'X11',
    file: 'extra/X11_godey1854_walking_dress_no_dimensions.jpg',
    places: [
      [550, 258],
      [693, 275],
      [698, 760],
      [449, 746],
      [381, 525],
      [381, 378],
    ],
  },
];

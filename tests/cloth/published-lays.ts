/**
 * Two published sets of shapes to be laid on a strip of a given height, as short as it can be made.
 * ESICUP, Cutting & Packing Datasets (2025), folder 2d_irregular, CC0 1.0: `fu` after Fujita, Akagi and Hirokawa, "Hybrid
 * approach to plate nesting" (ASME 1993), `shapes0` after Oliveira, Gomes and Ferreira, OR Spektrum 22 (2000).
 * Best lengths: Gardeyn and Wauters, "An open-source heuristic to reboot 2D nesting research" (arXiv 2509.13329, 2025), from
 * the densities of their tables 2 and 3.
 */
import type { LayTask, ToLay } from '../../core/cloth/lay-task';

type Corners = readonly (readonly [number, number])[];

const quarters = [0, 1, 2, 3].map((n) => ({ turn: (n * Math.PI) / 2 }));

function shapes(list: readonly (readonly [number, Corners])[], stances: ToLay['stances']): ToLay[] {
  return list.map(([count, corners], index) => {
    return { id: `p${index}`, count, stances, outline: corners.map(([x, y]) => ({ x, y })) };
  });
}

const fuShapes: readonly (readonly [number, Corners])[] = [
  [
    1,
    [
      [0, 0],
      [10, 0],
      [10, 10],
      [0, 10],
    ],
  ],
  [
    1,
    [
      [0, 0],
      [10, 0],
      [10, 10],
      [0, 10],
    ],
  ],
  [
    1,
    [
      [0, 0],
      [14, 0],
      [14, 9],
      [0, 9],
    ],
  ],
  [
    1,
    [
      [0, 0],
      [14, 0],
      [7, 7],
    ],
  ],
  [
    1,
    [
      [0, 9],
      [0, 0],
      [14, 9],
    ],
  ],
  [
    1,
    [
      [0, 0],
      [14, 0],
      [14, 14],
      [0, 14],
    ],
  ],
  [
    1,
    [
      [0, 0],
      [10, 4],
      [10, 9],
      [0, 9],
    ],
  ],
  [
    1,
    [
      [0, 0],
      [5, 0],
      [5, 9],
      [0, 9],
    ],
  ],
  [
    1,
    [
      [0, 0],
      [14, 0],
      [14, 14],
    ],
  ],
  [
    1,
    [
      [0, 0],
      [10, 0],
      [10, 10],
      [0, 14],
    ],
  ],
  [
    1,
    [
      [0, 8],
      [4, 0],
      [8, 8],
    ],
  ],
  [
    1,
    [
      [0, 0],
      [14, 0],
      [7, 12],
    ],
  ],
];

const zeroShapes: readonly (readonly [number, Corners])[] = [
  [
    15,
    [
      [0, 0],
      [2, 0],
      [2, 3],
      [12, 3],
      [12, 0],
      [14, 0],
      [14, 5],
      [0, 5],
    ],
  ],
  [
    7,
    [
      [0, 0],
      [6, -6],
      [12, 0],
      [6, 6],
    ],
  ],
  [
    9,
    [
      [0, 0],
      [6, 0],
      [6, -2],
      [7, -2],
      [11, 2],
      [11, 4],
      [8, 4],
      [8, 1],
      [2, 1],
      [2, 4],
      [0, 4],
    ],
  ],
  [
    12,
    [
      [0, 0],
      [2, 0],
      [2, -2],
      [4, -2],
      [4, 0],
      [6, 0],
      [6, 2],
      [4, 2],
      [4, 4],
      [2, 4],
      [2, 2],
      [0, 2],
    ],
  ],
];

export const fu: LayTask = { ground: { across: 38, kept: [] }, toLay: shapes(fuShapes, quarters) };
export const FU_AREA = 1083;
export const FU_BEST_LENGTH = 30.841;

export const shapes0: LayTask = { ground: { across: 40, kept: [] }, toLay: shapes(zeroShapes, [{ turn: 0 }]) };
export const SHAPES0_AREA = 1596;
export const SHAPES0_BEST_LENGTH = 57.016;

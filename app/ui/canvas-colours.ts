/** The colours of tokens.css for drawing on a canvas, which cannot read custom properties cheaply. */
export const canvasColours = {
  paper: '#d8c5a0',
  paperDeep: '#c3ab80',
  sheet: '#fbf6ea',
  ink: '#241d15',
  inkSoft: '#5b4e3d',
  line: '#b9a67f',
  chalk: '#1f5c8c',
  chalkDeep: '#14426a',
  chalkPale: '#dbe8f1',
  wrong: '#96341c',
  good: '#37583a',
} as const;

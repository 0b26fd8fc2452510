/** The words of the demo garment. */
export const demoWords = {
  garment: 'Linden petticoat',
  book: 'Our own booklet',
  sourceRemarks: 'Drawn for this demonstration. Half of the front on a fold; the back is cut alike.',
  wornOver: 'shift',
  plate: 'Plate 14',
  panel: 'Panel',
  waist: 'waist',
  side: 'side seam',
  hem: 'hem',
  fold: 'centre fold',
  ring: 'Skirt',
  cloth: 'Sprigged lawn',
  placket: 'Placket strip',
} as const;

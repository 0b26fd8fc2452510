/** Sentences about keeping garments on this device. */
export const storageWords = {
  full: 'this device has no room left. Save the garment to a file, then make room.',
  cannotWrite: 'the browser would not write. I keep trying; save the garment to a file to be safe.',
  changedElsewhere:
    'this garment was changed in another window since it was opened in this one. Save it to a file to keep both.',
  newerElsewhere: 'a newer Inchsquare was opened in another window. Save the garment to a file, then reload this page.',
  openElsewhere: 'this garment is open in another window, and only one window at a time can change it.',
} as const;

/** Words inside a project file, and about one. */
export const projectFileWords = {
  readMe: [
    'This is one garment drafted with Inchsquare, with the pictures it was traced from.',
    'Open it with Inchsquare: on the shelf, choose "Open a file".',
    '',
    'garment.json  the draft: measures, pieces, edges; every length in millimetres',
    'photos/       the pictures, byte for byte as they came',
    'photos.json   their names and kinds',
    '',
  ].join('\r\n'),
  refused: {
    'not-a-project': 'That file is not an Inchsquare garment. Choose one whose name ends in .inchsquare.zip.',
    broken: 'That file is damaged or was cut short, and cannot be opened. Nothing was changed; try another copy of it.',
    'too-large': 'That file unpacks to more than 300 MB, which is more than this program opens. Nothing was changed.',
    newer:
      'That garment was made with a newer Inchsquare. Bring this one up to date, then open it; nothing was changed.',
    'unknown-field':
      'That garment holds something this Inchsquare does not know, as one made with a newer Inchsquare may. Bring this one up to date, then open it; nothing was changed.',
    'not-a-garment': 'The draft inside that file does not hold together, so it was not opened. Nothing was changed.',
  },
  missingPhotos: (count: number) =>
    count === 1
      ? 'One picture was missing from the file. The draft itself is whole.'
      : `${count} pictures were missing from the file. The draft itself is whole.`,
} as const;

/** Words for cleaning up a picture for the eye, in whichever room it is shown. */
export const cleanUpWords = {
  label: 'Clean up the picture',
  how: {
    'as-it-is': 'As it is',
    even: 'Even light',
    contrast: 'More contrast',
    'black-and-white': 'Black and white',
  },
  busy: 'Cleaning up…',
  failed: 'The picture could not be cleaned up, most likely for want of memory. It is shown as it is.',
} as const;

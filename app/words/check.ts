/** Words of the list before cutting. */
export const checkWords = {
  title: 'Before you cut',
  intro: 'Everything still open, from every room. Press a line to go where it is mended.',
  stops: (count: number) => (count === 1 ? '1 thing must be settled first' : `${count} things must be settled first`),
  warns: (count: number) => (count === 1 ? '1 thing is worth a look' : `${count} things are worth a look`),
  clear: 'Nothing is open. Measure the printed test square, make the mock-up, then cut.',
  mend: (room: string) => `Mend it: ${room}`,
  cautions: 'Take care',
  cautionLines: [
    'A draft is a plan: measure the printed test square before you cut, and make a mock-up in cheap cloth first.',
    'Hot irons burn and scorch; test the heat on a scrap. Cut away from your hand, close blades, and count the pins after a fitting.',
    'For a child: nightwear and cords on children’s clothes come under safety rules on burning and on cords. Look up the rules where you live and follow them.',
  ],
} as const;

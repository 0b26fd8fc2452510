import type { PointName, PointState } from '../../../core/check/points-to-be-sure-of';

/** Words of the list before cutting. */
export const checkWords = {
  title: 'Before you cut',
  intro: 'What to be sure of, from every room, with the figures behind it. Each line leads to where it is mended.',
  counts: (stops: number, warns: number, left: number) => {
    const said = [
      ...(stops === 0 ? [] : [stops === 1 ? '1 thing must be settled first' : `${stops} things must be settled first`]),
      ...(warns === 0
        ? []
        : [
            `${warns}${stops === 0 ? (warns === 1 ? ' thing' : ' things') : ''} ${warns === 1 ? 'is' : 'are'} worth a look`,
          ]),
      ...(left === 0 ? [] : [`${left} left knowingly`]),
    ];
    return `${said.join(', ')}.`;
  },
  clear: 'Nothing is open. Measure the printed test square, make the mock-up, then cut.',
  points: 'To be sure of',
  point: {
    measures: 'The measures are sure',
    'scale-known': 'The scale of the diagram is known',
    outlines: 'The outlines and printed figures hold',
    'goes-round': 'The panels go round the body',
    'waist-curved': 'The waist is curved, or knowingly straight',
    'seams-true': 'The seams are paired and true',
    'pinned-settled': 'What was pinned is settled',
    allowances: 'Every piece has its allowances',
    grain: 'Every piece has its grain',
    'cut-counts': 'How often each piece is cut',
    'scale-proved': 'The scale is proved on paper',
    'lay-made': 'The lay is made and the cloth is enough',
    'print-current': 'What is printed is the pattern as it is',
  } satisfies Record<PointName, string>,
  state: {
    settled: 'settled',
    open: 'open',
    left: 'left knowingly',
    'not-looked-at': 'not yet looked at',
  } satisfies Record<PointState, string>,
  goSee: (room: string) => `Go to ${room}`,
  seen: (point: string, room: string) => `${point}: go to ${room}`,
  leave: 'Leave it as it is',
  why: 'Why it is left so',
  whyHint: 'It comes back by itself when its figures change.',
  whyNeeded: 'Write a reason first, so that you know it later.',
  leaveNow: 'Leave it so',
  notAfterAll: 'Not after all',
  leaveLabel: 'leaving it as it is',
  leftSince: (date: string, why: string) => `Left as it is on ${date}: ${why}`,
  takeUp: 'Take it up again',
  takeUpLabel: 'taking it up again',
  print: 'Print this list (PDF)',
  file: 'before you cut',
  printing: 'Making the page…',
  printed: (pages: number) => (pages === 1 ? 'Made: 1 page.' : `Made: ${pages} pages.`),
  printFailed: 'The page could not be made. Try again.',
  mend: (room: string) => `Mend it: ${room}`,
  cautions: 'Take care',
  cautionLines: [
    'A draft is a plan: measure the printed test square before you cut, and make a mock-up in cheap cloth first.',
    'Hot irons burn and scorch; test the heat on a scrap. Cut away from your hand, close blades, and count the pins after a fitting.',
    'For a child: nightwear and cords on children’s clothes come under safety rules on burning and on cords. Look up the rules where you live and follow them.',
  ],
} as const;

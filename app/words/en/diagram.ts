const whole = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 0 });
const tenth = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 1 });

/** Words of the Diagram room. */
export const diagramWords = {
  canvas:
    'The picture of the diagram. Choose a corner or a known length in the notebook, then move it with the arrow keys.',
  photoView: 'As photographed',
  squaredView: 'Squared up',
  showing: 'Show the picture',

  empty: {
    title: 'Bring in the diagram',
    ask: 'Drop a picture of it here, paste it, or choose it.',
    tips: 'A photo of the page, a scan or a screenshot will do. Hold the camera straight over the page, let it fill the frame, and keep something rectangular in sight: the frame round the plate, or the page itself.',
  },
  choose: 'Choose a picture',
  chooseAgain: 'Choose the picture again',
  addAnother: 'Add another diagram',
  otherPage: 'Another page of this picture',
  otherPageName: (name: string) => `${name}, other page`,
  dropHere: 'Let go to bring the picture in',
  opening: 'Opening the picture…',
  taken: (name: string, across: number, down: number) =>
    `${name} is in: ${whole.format(across)} by ${whole.format(down)} pixels.`,
  takenLabel: 'bring in a diagram',
  missing: 'The picture of this diagram is not on this device. Choose it again, and everything traced stays as it is.',
  wrongPicture: (across: number, down: number) =>
    `That is another picture: this diagram’s own is ${whole.format(across)} by ${whole.format(down)} pixels.`,
  notStored:
    'The picture could not be kept on this device: there is no room left. Free some space and bring it in again.',
  linkDropped: 'That was a link, not a picture. Save the picture to your device first, then bring in the file.',
  noPicturePasted: 'There is no picture in what was pasted. Copy the picture itself, or choose the file.',
  refused: {
    'empty-file': 'That file is empty: it holds 0 bytes. Copy or download it again.',
    'not-a-picture':
      'That is not a picture that can be read here. Use a JPEG, PNG, WebP, AVIF, HEIC, GIF, TIFF or BMP, or a page of a PDF.',
    'cut-short': 'The file stops before the picture does, so a part is missing. Copy or download it again.',
    damaged: 'The file begins like a picture but cannot be opened: it seems damaged. Make a new photo or a new copy.',
    blank:
      'The picture came out blank: every part of it has one colour. Open it elsewhere, save a copy as JPEG, and bring that in.',
    'no-memory':
      'This device has not enough memory for the picture. Save a smaller copy, about 4,000 pixels along the long side, and bring that in.',
  },
  otherFormat: {
    pdf: 'That is a PDF, and only one of its pages can be the picture of a diagram. Bring it in as a new diagram and choose the page.',
    'big-tiff':
      'That TIFF is of the kind made for files over 4 gigabytes, which cannot be read here. Save it as PNG or JPEG.',
    'jpeg-xl': 'A JPEG XL picture cannot be read here yet. Save it as JPEG or PNG and bring that in.',
    svg: 'An SVG drawing cannot be read here yet. Save it as a PNG at least 2,000 pixels wide and bring that in.',
  },
  pdf: {
    title: 'Which page?',
    help: (name: string, pages: number) => `${name} has ${pages === 1 ? '1 page' : `${whole.format(pages)} pages`}.`,
    page: (pages: number) => `Page, 1 to ${whole.format(pages)}`,
    before: 'Page before',
    after: 'Page after',
    preview: (number: number) => `Page ${number}, small`,
    onPaper: (across: string, down: string) => `On paper it is ${across} across and ${down} down.`,
    take: 'Bring in this page',
    leave: 'Leave it',
    pageName: (name: string, number: number) => `${name}, page ${number}.png`,
    refused: {
      locked:
        'That PDF is locked with a password. Open it where you know the password, print the page to a new PDF or make a screenshot, and bring that in.',
      damaged: 'The file begins like a PDF but cannot be opened: it seems damaged. Copy or download it again.',
    },
    pageRefused: (number: number) =>
      `Page ${number} cannot be drawn. Show it as large as the screen allows elsewhere, make a screenshot, and bring that in.`,
  },
  tooManyPixels: (across: number, down: number) =>
    `That picture is ${whole.format(across)} by ${whole.format(down)} pixels, which is ${whole.format((across * down) / 1e6)} megapixels; more than 100 cannot be opened safely. Make a smaller copy with any picture program: 5,000 pixels along the long side are plenty to trace from.`,

  list: 'Diagrams',
  name: 'Name of this diagram',
  pickDiagram: 'Diagram on the table',
  remove: 'Take this diagram off the table',
  removed: 'The diagram is off the table; pieces traced from it stay. Undo brings it back.',
  unnamed: 'Diagram',

  square: {
    title: '1 Square up',
    help: 'Find something that is truly rectangular, the frame round the plate or the page, and put a corner on each of its corners. The picture is then laid flat.',
    flat: 'It is flat already',
    corners: 'Four corners',
    how: 'How it lies',
    curved: 'Curved sides',
    squares: 'Printed squares',
    side: ['Top', 'Right', 'Bottom', 'Left'] as const,
    curvedHelp:
      'The four sides are followed as they bend, each through the small rings on it. Move a ring to where the edge of the page runs; the picture is flattened between the four curves.',
    placesAsNumbers: 'The rings as numbers',
    ring: (side: string, number: number) => `${side} side, ring ${number}`,
    followAgain: 'Follow the sides again',
    squaresHelp: (across: number, down: number, left: number) =>
      `${across} by ${down} printed squares are followed, all their crossings together.${left > 0 ? ` ${left === 1 ? '1 crossing that does not agree is' : `${left} crossings that do not agree are`} left out.` : ''}`,
    squaresMiss: (usual: string, worst: string) => `The crossings lie ${usual} off as a rule, ${worst} at worst.`,
    squaresPixels: (px: number) => `${tenth.format(px)} pixels of the photo`,
    oneSquare: 'One square is',
    takeSquare: 'Take it as known lengths',
    squareTaken: (count: number, length: string) =>
      `A known length across and one down were added, ${count} squares of ${length} and more.`,
    corner: ['Top left', 'Top right', 'Bottom right', 'Bottom left'] as const,
    across: (corner: string) => `${corner}, pixels across`,
    down: (corner: string) => `${corner}, pixels down`,
    asNumbers: 'The corners as numbers',
    cornerHead: 'Corner',
    acrossHead: 'across',
    downHead: 'down',
    nudge: 'A corner can be typed, dragged, or moved with the arrow keys: 1 pixel, with Shift 10.',
    reset: 'Start again',
    search: {
      find: 'Find the corners',
      another: 'Another proposal',
      back: 'Back to the proposal',
      refine: 'Draw them to the edges',
      running: {
        find: 'Looking for the corners…',
        refine: 'Following the edges…',
        squares: 'Looking for printed squares…',
      },
      on: (kind: 'page' | 'frame', number: number, all: number) =>
        `The corners lie on ${kind === 'page' ? 'the edge of the paper' : 'a printed frame'}${all === 1 ? '' : `, proposal ${number} of ${all}`}. Look at each before you go on.`,
      'nothing-sure':
        'Nothing rectangular is seen surely enough in this picture. The corners are left as they are; put them in place yourself.',
      stopped: 'Stopped. The corners are left as they are.',
      failed: 'The picture could not be searched, most likely for want of memory. The corners are left as they are.',
      moved: (by: readonly number[]) => {
        const sides = ['top left', 'top right', 'bottom right', 'bottom left'];
        if (by.every((each) => each < 0.05)) return 'The corners lie on the edges already.';
        const each = by.map((moved, corner) => `${sides[corner]} ${tenth.format(moved)}`).join(', ');
        return `Each corner moved, in pixels: ${each}.`;
      },
      sideNotSeen: (side: 0 | 1 | 2 | 3) =>
        `No edge or printed line is seen along the ${(['top', 'right', 'bottom', 'left'] as const)[side]} side. Put the corners nearer to it, or leave them as they are.`,
      'sides-do-not-meet':
        'No four edges that meet are seen near these corners. Put them nearer to a frame or the edge of the page.',
      refineLabel: 'draw the corners to the edges',
      followLabel: 'follow the curved sides',
      squaresLabel: 'follow the printed squares',
      squaresFound: ({ columns, rows }: { readonly columns: number; readonly rows: number }) =>
        `${columns} by ${rows} printed squares are followed.`,
      'no-squares':
        'No printed squares are seen within the corners. Put the corners on the outside of the squares and try again.',
      'too-few': 'Fewer than 2 by 2 printed squares are seen within the corners, which says too little.',
      'folds-over':
        'The crossings found do not lie as squares on a page can. Put the corners on the outside of the squares and try again.',
    },
    sides: 'What is known of its sides',
    sidesKnown: {
      'not-known': 'not known',
      a4: 'a page of A4',
      letter: 'a page of US Letter',
      typed: 'this proportion',
    },
    wayUp: 'It lies',
    upright: 'upright',
    sideways: 'sideways',
    proportionAcross: 'Across',
    proportionDown: 'Down',
    notKnownHint: 'Then give two known lengths below, one across and one down, and the proportion comes from them.',
    turn: 'Quarter turn',
    preview: 'As it will lie',
    squaring: 'Squaring up…',
    stopped: 'Stopped. The picture is squared up again as soon as a corner moves.',
    again: 'Square it up now',
  },

  known: {
    title: '2 Known lengths',
    help: 'Draw a line along something whose length at full size you know, as long as you can find: a printed dimension, a scale bar, a quarter of the waist. A second line square to the first checks it and settles across and down apart.',
    draw: 'Draw a known length',
    drawing: 'Drag along the line, or press on its two ends.',
    tooNear: 'Too near to the first end to tell them apart. Enlarge the picture, then press the other end.',
    drawingSecond: 'Now press on the other end.',
    byNumbers: 'Place it by numbers',
    toTicks: 'Bring ends to printed ticks',
    ticksReading: (percent: number) => `The printed lines are being read: ${percent} %.`,
    ticksUnreadable: 'The lines of this picture could not be read, so ends stay where you put them.',
    giveUp: 'Leave it',
    fresh: 'How long is this line at full size?',
    card: (number: number) => `Known length ${number}`,
    kind: 'It is',
    length: 'a length',
    share: 'a share of a measure',
    scaleBar: 'a scale bar',
    bar: {
      count: 'Count them in the picture',
      reading: (percent: number) => `The printed lines are being read: ${percent} %.`,
      seen: (intervals: number) => `${intervals} intervals are seen between the ends.`,
      tail: (intervals: number) =>
        `${intervals} intervals are seen, and beyond the last stroke the line runs on plain. That tail is not counted: bring the ends to the strokes.`,
      notCounted: 'No even intervals are seen between these ends. Count the spaces yourself, not the strokes.',
      bring: 'Bring the ends to the strokes',
      finer: (intervals: number) => `With every short stroke there are ${intervals}.`,
      coarser: (intervals: number) => `By the long strokes alone there are ${intervals}.`,
      take: (intervals: number) => `Take ${intervals}`,
      intervals: 'Intervals',
      each: 'One is worth',
      all: 'All together',
      units: 'In any unit: 1 in, 2 ft 3, 1 nail (2 1/4 in), 5 cm.',
    },
    fullSize: 'At full size',
    part: 'This share',
    ofThe: 'of the',
    ease: 'and ease',
    take: 'Take it',
    shares: {
      '1/1': 'the whole',
      '1/2': 'a half',
      '1/3': 'a third',
      '1/4': 'a quarter',
      '1/6': 'a sixth',
      '1/8': 'an eighth',
      '1/12': 'a twelfth',
    },
    notMeasured: (measure: string) => `Her ${measure} is not measured yet, so this line cannot be used.`,
    toWearer: 'Go to the Wearer room',
    shareComes: (length: string) => `That comes to ${length}.`,
    asRead: (length: string) => `By the others it measures ${length}.`,
    byMaking: (length: string) => `It measures ${length}, because the scale is taken from it.`,
    measures: (length: string, off: string, percent: string) => `It measures ${length}: ${off} (${percent}).`,
    exact: (length: string) => `It measures ${length}, as it should.`,
    over: (length: string) => `${length} too long`,
    under: (length: string) => `${length} too short`,
    percent: (share: number) => `${tenth.format(Math.abs(share) * 100)} %`,
    ends: 'Its ends as numbers',
    from: 'First end',
    to: 'Other end',
    remove: (number: number) => `Remove known length ${number}`,
    choose: (number: number) => `Show known length ${number} on the picture`,
    scanned: (across: string, down: string) =>
      `This picture says how large it is on paper: ${across} across and ${down} down. Where the print says its scale, such as one eighth of full size, that is a known length too.`,
    timesLarger: 'Full size is so many times the print',
    takeScanned: 'Take the width of the paper as a known length',
  },

  together: {
    title: 'With the other pictures',
    othersLean: 'The other pictures go by this one.',
    nameOf: (name: string) => name.trim() || 'the other picture',
    scale: 'Its scale is',
    ownScale: 'its own, from its known lengths',
    sameAs: (name: string) => `that of ${name}`,
    alike: 'Because',
    because: (why: string) => `Because ${why}.`,
    by: {
      paper: 'both were printed at one scale, and each says its size on paper',
      rectangle: 'both are squared up by rectangles of one size, such as the pages of one book',
      pixel: 'both have pixels of one size, as screenshots at one zoom',
    },
    notAlike:
      'These two are not of one kind: one lies flat and the other is squared up by a rectangle. Square both up by the page, or give this one a known length of its own.',
    joined: 'It goes on from',
    alone: 'no other picture',
    help: (name: string) =>
      `Give two places or more that are seen here and in ${name}, as far apart as you can. Or choose which edges meet in the gutter. Both are then one diagram.`,
    letter: (index: number) => String.fromCharCode(65 + (index % 26)),
    place: (letter: string) => `Place ${letter}`,
    apart: (length: string) => `${length} apart`,
    removePlace: (letter: string) => `Remove place ${letter}`,
    give: 'Give a matching place',
    edgesMeet: 'Edges that meet',
    chooseSide: 'choose',
    sides: {
      left: 'its left and the other’s right',
      right: 'its right and the other’s left',
      top: 'its top and the other’s bottom',
      bottom: 'its bottom and the other’s top',
    },
    size: 'Its size',
    sizes: { fitted: 'as the places ask', own: 'by its own scale' },
    needsTwo: (given: number) =>
      given === 0 ? 'No matching place is given yet. Two are needed.' : 'One more matching place is needed.',
    unchecked: 'Laid together by two places, and nothing checks them. A third would.',
    apartAtMost: (length: string) => `Laid together: the places lie ${length} apart at most.`,
    askHere: 'Press on a place that is seen in both pictures, such as where two lines cross.',
    askThere: (name: string) => `Now press on the same place in ${name}.`,
  },

  check: {
    title: '3 Check',
    good: 'Good enough to trace.',
    notGood: 'Not good enough to trace yet.',
    withCare: 'It can be traced; mind what is said above.',
    onePixel: (across: string, down: string) =>
      across === down
        ? `1 pixel of the photo is ${across} at full size.`
        : `1 pixel of the photo is ${across} across and ${down} down at full size.`,
    pixelIn: (perInch: number) =>
      perInch >= 1.5 ? `1/${whole.format(perInch)} in` : `${tenth.format(1 / perInch)} in`,
    pixelMm: (mm: number) => `${mm.toFixed(2)} mm`,
    slip: (length: string) => `A slip of 2 pixels at the end of a line makes ${length}.`,
    size: (across: string, down: string) => `The whole picture is ${across} across and ${down} down at full size.`,
    rectangle: (across: string, down: string) =>
      `The rectangle you squared up by is ${across} across and ${down} down at full size.`,
    across: (percent: string) => `Across is drawn ${percent} larger than down; each way has its own scale.`,
    down: (percent: string) => `Down is drawn ${percent} larger than across; each way has its own scale.`,
    percent: (share: number) => `${tenth.format(share * 100)} %`,
    alike: 'Across and down are one scale.',
    truth: (off: string, over: string) =>
      `The page is good to ${off} over ${over}: the other lines seen in it lie that straight and square.`,
    truthUnknown:
      'Nothing else rectangular is seen in the picture that could check how true it lies. A printed line that should be straight can.',
    toDraft: 'Go to the Draft room',
  },
  ruled: {
    title: 'Lines that should be straight',
    help: 'A printed line that is surely straight, or two that are surely square, tell how true the picture lies once it is squared up. Long ones tell most.',
    mark: 'Mark a straight line',
    following: 'Following the printed line…',
    line: (letter: string) => `Line ${letter}`,
    letter: (index: number) => String.fromCharCode(97 + (index % 26)),
    straight: (off: string, over: string) => `Straight to ${off} over ${over}.`,
    endsOnly: (length: string) =>
      `No printed line was seen between its ends, ${length} apart: only its direction counts. Say below which line it is square to.`,
    square: (letter: string, off: string, over: string) => `Square to line ${letter} to ${off} over ${over}.`,
    beyond: 'It reaches beyond what can be laid flat. Remove it, or put the corners right.',
    noScale: 'How far off it is can be said once there is a known length.',
    squareTo: 'Square to',
    none: 'no other line',
    remove: (letter: string) => `Remove line ${letter}`,
    full: 'That is as many lines as are kept for one picture. Remove one first.',
  },
  followed: (count: number) =>
    count === 1 ? 'The piece traced on this diagram followed.' : `The ${count} pieces traced on this diagram followed.`,

  source: {
    title: 'Where it came from',
    book: 'Book or magazine',
    page: 'Page',
    plate: 'Plate or figure',
    year: 'Year',
    remarks: 'Remarks',
    remarksHint: 'What the text says of the garment, the printed scale, what puzzled you.',
  },
  heldBack: (across: number, down: number) =>
    `A point can lie at most one picture’s size outside the picture. This one is at ${whole.format(across)} across and ${whole.format(down)} down now.`,
  cannotSquare: 'It cannot be squared up yet, so this is the picture as photographed.',
  notANumber: 'That is not a number; nothing was changed.',

  labels: {
    corner: (corner: string) => `move ${corner.toLowerCase()} corner`,
    corners: 'set the corners',
    side: (side: string) => `move ${side.toLowerCase()} side`,
    flat: 'how the picture lies',
    sides: 'sides of the rectangle',
    turn: 'turn the picture',
    scaleFrom: 'whose scale a picture has',
    join: 'join two halves',
    otherPage: 'another page of a picture',
    addLength: 'add a known length',
    moveLength: 'move a known length',
    changeLength: 'change a known length',
    removeLength: 'remove a known length',
    rule: 'mark a straight line',
    squareTo: 'which lines are square',
    moveRuled: 'move a straight line',
    removeRuled: 'remove a straight line',
    name: 'name of the diagram',
    source: 'where it came from',
    remove: 'take a diagram off the table',
  },
} as const;

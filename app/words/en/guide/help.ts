import type { HelpName } from '../../../guide/help';
import type { Sentence } from '../../written';

/** What each card is about, in a few sentences beside it. */
export const helpWords: Readonly<Record<HelpName, Sentence>> = {
  who: 'Measures belong together: one person, one day, over the same clothes. Take them anew as a new set, and the old ones stay. Lengths are written in inches or in centimetres, changed here or at the top of any room; what is drawn stays as it is.',
  measures: (shownIn) =>
    `These decide how a skirt or drawers fit. Write ${shownIn === 'in' ? '28, 34 1/2 or 87 cm' : '71, 87.5 or 34 1/2 in'}; Enter goes on to the next. A measure you cannot take now can be guessed from the others, and is marked as a guess.`,

  'square-up':
    'A photo is never quite straight. Put the four corners on something that was printed square, the frame of the plate or the page itself, and the picture is laid flat as if seen from straight above.',
  'known-lengths':
    'A picture has no size of its own. Draw along a line whose true length you know: a printed figure, a scale bar, a quarter of the waist. The longer the line, the smaller the slip. One line across and one down settle both ways.',
  together:
    'Where one plate came in several pictures, two places that are in both join them, and one scale serves all.',
  'scale-check':
    'Every line you gave is measured again at the scale that suits all of them. Where one disagrees, the figure was misread, an end lies beside its mark, or the plate was not drawn to scale.',
  source: 'Which book the diagram is from, so that you find it again in ten years. It is printed on the label.',
  diagrams:
    'Every picture you brought in. Each is squared up and scaled by itself, or joined to another that shows the same plate.',

  tracing:
    'Press a corner wherever the line turns sharply, and a place or two along each curve; the line runs through every point. Where the print is clear the trace can follow it by itself. Press the first corner again to close the piece.',
  pieces: 'Every piece of the garment by its name. A waistband or a strip needs no tracing: two numbers make it.',
  piece:
    'How often it is cut and how: as drawn, as a pair that mirror one another, or as half of a piece on the fold. And whether the line you traced is sewn on or cut on, which old plates seldom say.',
  edge: 'Say what the edge is, for the checks rest on it: what is sewn, what goes round the waist, what is turned up. The allowance is added outside the line. A figure printed beside it is compared with what is drawn.',
  point:
    'A corner or a place on a curve, by how far across and down it lies from the zero of the table. Arrow keys move it by the step it snaps to.',
  outline:
    'The piece told point by point and edge by edge, for the keyboard and the ear. Whatever is chosen here is chosen on the table too.',
  dart: 'A wedge sewn away to shape the cloth. Its width lies on the edge, its point in the piece; it is counted out of every length round the body.',
  notch:
    'A small mark across the allowance. Two notches on two edges meet when they are sewn, so neither is stretched.',
  'words-on-piece': 'Words printed on the piece where they stand: gathers from here, placket, right side.',
  grain:
    'The straight of the cloth: along it the cloth hardly stretches. It mostly runs along the centre, and the piece is laid by it.',
  'whole-garment':
    'A small change to one piece, taken as often as it is cut and on both its halves, is a large one on the body. This is what it comes to all round.',
  'printed-sums':
    'A figure printed for several edges together, such as a waist all round, is held against the sum of the single ones.',

  'change-length':
    'Cut across and moved apart, or folded away, where a figure is longer or shorter; at the hem where only the length differs.',
  'change-width':
    'Width taken in at a seam fades to nothing; width slashed in opens like a fan from one edge to another; gathers and pleats are width that is sewn up smaller.',
  'change-darts':
    'A dart may turn about its point, be parted in two or become flare or a seam: the wedge it takes away stays the same.',
  'change-waist': 'A straight waist gets the curve of a body, the waist is raised or lowered, a hem is levelled.',
  'new-pieces':
    'Pieces that follow from those there are, and base patterns drawn from the measures, to trace over or to lay beside.',
  trying:
    'Nothing is done yet: the change is shown over the piece with what it would do in numbers, and what would newly be wrong. Take it, or leave everything as it was.',

  seams: 'Which edge is sewn to which. From then on their lengths are held against one another, whatever you change.',
  'proposed-pairs': 'Edges whose names and lengths say that they belong together. Take those that are right.',
  'pair-edges':
    'Press one edge on the table and then the one it is sewn to. Several edges on one side, as with panels on a band, are taken one after another.',
  'loose-edges': 'Seam edges that are sewn to nothing yet. One of them may be an opening, or a piece is missing.',
  'one-seam':
    'One edge walked along the other, as you would with two paper pieces: where notches fall, what is longer at the end, and how waist and hem run on across the seam.',
  walked:
    'Both sides in numbers, darts folded out. A difference may be meant, as ease over a shoulder or gathers at a band: then write it down.',
  trueing:
    'Ways to make the two sides agree: at either end, over the whole length, or with the difference kept as ease. Each is shown before it is taken.',

  ring: 'The pieces that together go once round the body, each as often as it is cut. A panel left out here shows at once: the garment is half as wide as the wearer.',
  'fit-findings': 'What the pieces and the measures say of one another, the gravest first.',
  levels:
    'Waist, hip and every other height at which the body was measured, down along the piece and not straight down the paper. Beside it what the pieces come to all round, darts folded away.',
  ease: 'Room beyond the body, to breathe and sit in. What is usual stands here with where it is from; what you write at a level goes before it.',
  'curved-waist':
    'From waist to hip a body is near to a cone, and the upper edge of a cone laid flat is a curve. A straight waist stands off in the middle and drags at the sides.',
  wearing:
    'The narrowest place must pass the widest of the body: with an opening, with a drawn-up waist, or over the shoulders. And a hem must leave room for a step.',
  'worn-over': 'How long the garment over this one is, so that nothing of this one shows below it.',

  'mock-ups':
    'A trial in cheap cloth, cut from the draft as it is now. The draft is kept as a version with it, so that pins are read against what was cut.',
  pinned:
    'Every pin from the fitting, and what became of it: still open, carried over into the draft, or declined with a reason. None is forgotten.',
  noting:
    'Say where on the edge the pins were and how much they took. A tuck pinned over both layers takes half of its width from each.',
  fading: 'How the change runs out before the first pin and after the last: to nothing, over the length you say.',
  carrying: 'Shown over the draft first, on both edges of the seam, with what it does to the whole garment.',

  'version-now': 'Keep the draft as it is now, with a number and a name, before you change much. It takes little room.',
  versions: 'Every draft you kept, the latest first. Choose one to see it under the draft of today.',
  'one-version':
    'What differs between this version and the draft, piece by piece. Any piece, or all of it, can be brought back; today’s draft is kept first.',
  steps: 'What was done to the pieces since they were traced, in order.',
  'as-traced': 'The lines as you first traced them. They stay as they are for ever and can be laid under the draft.',
  'what-was-cut':
    'Write down when cloth was cut from the draft. If the draft changes afterwards, you are told what no longer matches.',

  'compare-what':
    'Any piece over any other: of this garment, of a version, of another garment on the shelf, or of a base pattern from the measures.',
  'compare-how': 'By which corner or edge the second piece is laid on the first. It can also be moved by hand.',
  'compare-figures': 'Where the two part, edge by edge: how far out or in, and where most.',
  'compare-words': 'The same in sentences, to read aloud or to keep with the garment.',

  cloth:
    'How wide the cloth is from selvedge to selvedge, and how it lies. Folded lengthwise every piece is cut twice at once and fold pieces lie on the fold; opened out each is laid by itself. With a nap, a shine or a print with an up and a down all pieces point one way.',
  'cloth-more':
    'Stripes and repeats that must meet, flaws to keep clear of, shrinking in the wash, and remnants of odd shape.',
  'cut-from-it': 'Which pieces this cloth is for, and the strips that are cut with them: bands, facings, bias binding.',
  strip: 'A strip by its length and width. Where it may be pieced it is cut in lengths that go on the cloth.',
  'lay-how':
    'Straight along the selvedge, across it, or at 45° on the bias; whether pieces may turn about; how much room is left between them.',
  places:
    'Every piece on the cloth with its place in numbers. Pin one and it stays where it is when the rest is laid again.',
  'lay-sums':
    'What the lay takes, as a length and as what to ask for in the shop, in yards and in metres, and how much of the cloth is used.',
  beside: 'The same pieces laid straight and on the bias, or on other widths, side by side: what each takes and costs.',
  'bias-strips': 'From a square of cloth so many yards of binding, or for so many yards a square of this size.',
  budget: 'What the cloth costs, in money, coupons or points, and what this lay comes to.',
  'lay-plan': 'The lay on paper: a plan on one page for the cutting table, or a sheet to scale.',

  pages:
    'Full-size pages to be joined, or one small sheet of numbered squares to carry the piece to brown paper with a yardstick.',
  'paper-size': 'The paper in your printer. Pages are laid so that as few as can be are needed.',
  'more-pages': 'Margins, how pages overlap and are marked, and what else is printed on them. Most leave it as it is.',
  proof:
    'Printers and the programs that show pages shrink them. Measure the printed rules, write down what you read, and you are told whether the pattern can be trusted and what to do if not.',
  printed:
    'What was printed and when. After a change you are told which pages are no longer true; only those are printed anew.',
  envelope: 'A label with all that one forgets: what it is, for whom, from which book, how much cloth.',
  'drawing-files': 'For other programs: SVG at full size, DXF in millimetres.',
  'squares-sheet':
    'A small drawing on numbered squares and a table of points: how far across and how far down each lies from zero. Two lengths on it prove the whole.',
  'screen-paper':
    'A large screen, or a projector’s beam on the table, in the place of paper: measured once, the piece stands there at full size.',
};

import type { Diagram } from './diagram';
import type { Cutting, NamedStep, TracedLate } from './done-to-it';
import type { GarmentCloth, KeptLay } from './garment-cloth';
import type { GirthName, LengthName, Wearer } from './measure';
import type { Mockup } from './mockup';
import type { Piece } from './piece';
import type { Printing } from './printed';
import type { PrintedWhole } from './printed-whole';
import type { Seam } from './seam';
import type { PaperSize, SheetChoice, Sides } from './sheet-choice';

/** The number of the present shape of a stored garment. Every change of shape adds one and a migration. */
export const SCHEMA = 2;

/** Where a diagram came from. Every field may be empty. */
export interface Source {
  readonly book: string;
  readonly page: string;
  readonly plate: string;
  readonly year: string;
  readonly remarks: string;
}

/** A level round the body at which pieces are measured against it. */
export interface Level {
  readonly id: string;
  /** What she calls it; the girth's own name unless said. */
  readonly name?: string;
  /** The girth it is compared with. */
  readonly girth: GirthName;
  /** The body at this very level, where she has put the tape round it; it goes before the measure of that girth. */
  readonly body?: number;
  /** How far below the waist edge: a measure of the wearer, or a length. The waist itself is at length 0. */
  readonly depth:
    | { readonly kind: 'measure'; readonly measure: LengthName }
    | { readonly kind: 'length'; readonly length: number };
  /** Room wanted beyond the body, all the way round. */
  readonly ease: number;
}

/** Pieces that together go round the body, and how many times each does so. */
export interface Ring {
  readonly id: string;
  readonly name: string;
  readonly members: readonly RingMember[];
  readonly levels: readonly Level[];
}

/** A piece in a ring. `times` counts drawn widths round the body; without it the piece's own cut says. */
export interface RingMember {
  readonly pieceId: string;
  readonly times?: number;
  /** The edge its levels are measured from; the waist itself unless said. */
  readonly from?: HangsFrom;
}

/** An edge levels are measured from: where it lies on the body, in mm below the waist, less than 0 above it. */
export interface HangsFrom {
  readonly edgeId: string;
  readonly depth: number;
}

/** How pages and the squares sheet are made. */
export interface PaperChoice extends Omit<SheetChoice, 'rollLength' | 'margins'> {
  /** What her printer was measured to lose along the edge it loses most at (mm). */
  readonly loses?: number;
  /** And at each side of the upright sheet, where they differ (mm); `loses` is the most of them. */
  readonly losesAt?: Sides;
  /** Pieces as they lie on the table, each on pages of its own; turned and put together to save pages unless said. */
  readonly placed?: 'as-drawn';
  /** Fine squares over all pages. */
  readonly squaresOver?: 'inch' | 'centimetre';
  /** The finest step of the squares sheet's table: a sixteenth or an eighth of an inch, or a millimetre. */
  readonly step: 'sixteenth' | 'eighth' | 'millimetre';
  /** What her printer makes of a length, printed over drawn; pages are drawn so much larger or smaller in return. */
  readonly printer?: PrinterFactors;
  /** How the squares sheet is drawn and told. */
  readonly squares?: SquaresChoice;
}

/** How points are carried to large paper. */
export interface SquaresChoice {
  /** The side of a square at full size, at least; as fine as can be told apart where none is said. */
  readonly square?: number;
  /** Across and down from a zero unless said; or along a base line and out from it. */
  readonly from?: 'zero' | 'base-line';
  /** The edge whose ends bear the base line, for pieces for which she chose one. */
  readonly base?: readonly { readonly pieceId: string; readonly edgeId: string }[];
  /** Letters to be read from where one stands, of a sheet that lies on the floor. */
  readonly print?: 'usual' | 'large';
}

/** What a printer makes of a length: 0.99 prints 99 mm for 100. */
export interface PrinterFactors {
  readonly across: number;
  readonly down: number;
}

/** A finding that she has seen and leaves as it is, such as a straight waist: its kind and place, and why. */
export interface LeftKnowingly {
  readonly finding: string;
  /** YYYY-MM-DD */
  readonly date: string;
  readonly why: string;
}

/** The garment worn over this one: how long it is from the waist, and by how much this one must stay above its hem. */
export interface OuterGarment {
  readonly front?: number;
  readonly side?: number;
  readonly back?: number;
  readonly shorterBy: number;
}

/** A proof of printed scale: what the test square, or the rules of the check sheet, measured on paper. */
export interface ScaleProof {
  /** YYYY-MM-DD */
  readonly date: string;
  readonly across: number;
  readonly down: number;
  /** What they measure when true; the test square's sides unless said. */
  readonly wanted?: { readonly across: number; readonly down: number };
  /** What the square was printed on and corrected by; it proves nothing of other pages. */
  readonly on?: { readonly size: PaperSize; readonly printer?: PrinterFactors };
}

/** One garment: the whole of what is stored. Lengths are millimetres; inches exist only on screen and paper. */
export interface Garment {
  readonly schema: typeof SCHEMA;
  readonly id: string;
  readonly name: string;
  /** YYYY-MM-DD */
  readonly made: string;
  /** What lengths are shown in. */
  readonly shownIn: 'in' | 'cm';
  readonly source: Source;
  readonly remarks: string;
  readonly wearer: Wearer;
  readonly diagrams: readonly Diagram[];
  readonly pieces: readonly Piece[];
  readonly rings: readonly Ring[];
  /** Which edges are sewn to which. */
  readonly seams?: readonly Seam[];
  /** Figures printed for several edges together. */
  readonly wholes?: readonly PrintedWhole[];
  /** The garment that is worn over this one. */
  readonly outer?: OuterGarment;
  /** Each piece as it was when it was first drawn; never changed afterwards. */
  readonly traced?: readonly Piece[];
  /** Those of them that were drawn before that was kept. */
  readonly tracedLate?: readonly TracedLate[];
  /** What was done to the pieces, the oldest first. */
  readonly steps?: readonly NamedStep[];
  /** The version whose draft was last brought back, and the newest one there was then. */
  readonly drawnFrom?: { readonly version: number; readonly newest: number };
  /** Mock-ups, the oldest first. */
  readonly mockups?: readonly Mockup[];
  /** What was printed, the oldest first. */
  readonly printings?: readonly Printing[];
  /** What was cut, the oldest first. */
  readonly cuttings?: readonly Cutting[];
  /** What she knows of and leaves as it is. */
  readonly knowingly?: readonly LeftKnowingly[];
  /** The cloths it is cut from: the outer one first, then linings and the like. */
  readonly cloths?: readonly GarmentCloth[];
  /** The lay made on each, if one was. */
  readonly lays?: readonly KeptLay[];
  /** Cloth and notions used, in her words. */
  readonly cloth?: string;
  readonly notions?: string;
  /** The picture the shelf shows. */
  readonly coverPhotoId?: string;
  readonly paper: PaperChoice;
  readonly scaleProof?: ScaleProof;
}

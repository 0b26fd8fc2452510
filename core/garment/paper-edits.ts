import type { Garment, PaperChoice, PrinterFactors, ScaleProof, SquaresChoice } from './garment';

/** What is changed of the paper; what is `undefined` is as usual again. */
export type PaperChange = { readonly [Key in keyof PaperChoice]?: PaperChoice[Key] | undefined };

/**
 * The garment printed on other paper. A proof that does not say on which paper it was made goes, for it proves nothing
 * here; one that says so stays, and is found out of date.
 */
export function setPaper(garment: Garment, choice: PaperChange): Garment {
  const paper = Object.fromEntries(
    Object.entries({ ...garment.paper, ...choice }).filter(([, value]) => value !== undefined),
  ) as unknown as PaperChoice;
  if (paper.size === garment.paper.size || garment.scaleProof?.on) return { ...garment, paper };
  const { scaleProof: _, ...rest } = garment;
  return { ...rest, paper };
}

/** The garment with what the printed test square measured, or `undefined` to forget it. */
export function setScaleProof(garment: Garment, proof: ScaleProof | undefined): Garment {
  const { scaleProof: _, ...rest } = garment;
  return proof === undefined ? rest : { ...rest, scaleProof: proof };
}

/** The garment with its pages drawn for a printer that stretches or shrinks, or `undefined` for a true one. */
export function setPrinter(garment: Garment, printer: PrinterFactors | undefined): Garment {
  const { printer: _, ...paper } = garment.paper;
  return { ...garment, paper: printer === undefined ? paper : { ...paper, printer } };
}

/** The garment with its squares sheets drawn and told otherwise; a square of `undefined` is as fine as can be read. */
export function setSquares(
  garment: Garment,
  choice: Partial<Omit<SquaresChoice, 'square'>> & { readonly square?: number | undefined },
): Garment {
  const { square, ...rest } = { ...garment.paper.squares, ...choice };
  return { ...garment, paper: { ...garment.paper, squares: square === undefined ? rest : { ...rest, square } } };
}

/** The garment with the base line of a piece between the ends of an edge; `undefined` for the line the program takes. */
export function setBaseLine(garment: Garment, pieceId: string, edgeId: string | undefined): Garment {
  const others = garment.paper.squares?.base?.filter((base) => base.pieceId !== pieceId) ?? [];
  return setSquares(garment, { base: edgeId === undefined ? others : [...others, { pieceId, edgeId }] });
}

/** Another printer: neither the proof nor the correction holds for it. */
export function forgetPrinter(garment: Garment): Garment {
  return setPrinter(setScaleProof(garment, undefined), undefined);
}

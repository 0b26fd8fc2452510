import type { Garment, PaperChoice, ScaleProof } from './garment';

/** The garment printed on other paper. Scale proved on other paper proves nothing here, so the proof goes. */
export function setPaper(garment: Garment, choice: Partial<PaperChoice>): Garment {
  const paper = { ...garment.paper, ...choice };
  if (paper.size === garment.paper.size) return { ...garment, paper };
  const { scaleProof: _, ...rest } = garment;
  return { ...rest, paper };
}

/** The garment with what the printed test square measured, or `undefined` to forget it. */
export function setScaleProof(garment: Garment, proof: ScaleProof | undefined): Garment {
  const { scaleProof: _, ...rest } = garment;
  return proof === undefined ? rest : { ...rest, scaleProof: proof };
}

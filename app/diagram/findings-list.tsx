import type { DiagramFinding } from '../../core/diagram/diagram-findings';
import { useGarment } from '../state/garment-store';
import { Note } from '../ui/note';
import { findingSentence } from '../words/findings';

/** Findings as sentences, in the order they come. */
export function Findings({ findings }: { readonly findings: readonly DiagramFinding[] }) {
  const garment = useGarment((state) => state.garment);
  if (!garment) return null;
  return findings.map((finding) => (
    <Note
      key={`${finding.kind} ${'knownLengthId' in finding.place ? finding.place.knownLengthId : ''}`}
      tone={finding.weight}
    >
      {findingSentence(finding, garment)}
    </Note>
  ));
}

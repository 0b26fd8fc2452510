import type { Diagram, KnownLength, RuledLine } from './diagram';
import type { Garment } from './garment';
import { withOne, withoutOne } from './with-piece';

/** The garment with one more picture. */
export function addDiagram(garment: Garment, diagram: Diagram): Garment {
  return { ...garment, diagrams: [...garment.diagrams, diagram] };
}

/** The garment with one diagram changed. Pieces traced from it stay where they are. */
export function withDiagram(garment: Garment, diagramId: string, change: (diagram: Diagram) => Diagram): Garment {
  const diagrams = withOne(garment.diagrams, diagramId, change);
  return diagrams === garment.diagrams ? garment : { ...garment, diagrams };
}

/** The garment without a picture. Pieces traced from it stay, and forget where they came from. */
export function removeDiagram(garment: Garment, diagramId: string): Garment {
  const diagrams = withoutOne(garment.diagrams, diagramId);
  if (diagrams === garment.diagrams) return garment;
  const pieces = garment.pieces.map((piece) => {
    if (piece.diagramId !== diagramId) return piece;
    const { diagramId: _, ...bare } = piece;
    return bare;
  });
  return { ...garment, diagrams, pieces };
}

/** The diagram with a known length added, or the one of the same id replaced. */
export function putKnownLength(diagram: Diagram, known: KnownLength): Diagram {
  const knownLengths = diagram.knownLengths.some(({ id }) => id === known.id)
    ? withOne(diagram.knownLengths, known.id, () => known)
    : [...diagram.knownLengths, known];
  return knownLengths === diagram.knownLengths ? diagram : { ...diagram, knownLengths };
}

/** The diagram without a known length. */
export function removeKnownLength(diagram: Diagram, id: string): Diagram {
  const knownLengths = withoutOne(diagram.knownLengths, id);
  return knownLengths === diagram.knownLengths ? diagram : { ...diagram, knownLengths };
}

/** The diagram with a line that should be straight added, or the one of the same id replaced. */
export function putRuledLine(diagram: Diagram, line: RuledLine): Diagram {
  const { ruled = [] } = diagram;
  const isThere = ruled.some(({ id }) => id === line.id);
  return { ...diagram, ruled: isThere ? withOne(ruled, line.id, () => line) : [...ruled, line] };
}

/** The diagram without a line that should be straight; lines that stood square to it stand square to none. */
export function removeRuledLine(diagram: Diagram, id: string): Diagram {
  const { ruled = [], ...bare } = diagram;
  const left = ruled
    .filter((line) => line.id !== id)
    .map((line) => {
      const { squareTo, ...rest } = line;
      return squareTo === id ? rest : line;
    });
  return left.length === 0 ? bare : { ...bare, ruled: left };
}

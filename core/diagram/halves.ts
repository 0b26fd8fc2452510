/** Which pictures make up one laid-out diagram. */
import type { Diagram } from '../garment/diagram';

/** The picture that a joined one is laid onto in the end; the picture itself where it stands alone. */
export function firstHalf(diagrams: readonly Diagram[], id: string): Diagram | undefined {
  const seen = new Set<string>();
  let at = diagrams.find((diagram) => diagram.id === id);
  while (at?.joined && !seen.has(at.id)) {
    seen.add(at.id);
    const { diagramId } = at.joined;
    const next = diagrams.find((diagram) => diagram.id === diagramId);
    if (!next) break;
    at = next;
  }
  return at;
}

/** Every picture that is seen together with one, the uppermost first and the one all others are laid onto last. */
export function halvesOf(diagrams: readonly Diagram[], id: string): readonly Diagram[] {
  const first = firstHalf(diagrams, id);
  if (!first) return [];
  const others = diagrams.filter((diagram) => diagram !== first && firstHalf(diagrams, diagram.id) === first);
  return [...others.toReversed(), first];
}

/** Whether a picture may lean on another for its scale or its place: not on itself, nor on one that leans on it. */
export function mayLeanOn(diagrams: readonly Diagram[], id: string, on: string): boolean {
  if (id === on) return false;
  const ahead = [on];
  const seen = new Set<string>();
  for (let next = ahead.pop(); next !== undefined; next = ahead.pop()) {
    if (next === id) return false;
    if (seen.has(next)) continue;
    seen.add(next);
    const diagram = diagrams.find((each) => each.id === next);
    for (const link of [diagram?.scaleFrom, diagram?.joined]) if (link) ahead.push(link.diagramId);
  }
  return true;
}

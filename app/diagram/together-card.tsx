import type { DiagramMap } from '../../core/diagram/diagram-map';
import { mayLeanOn } from '../../core/diagram/halves';
import { waysAlike } from '../../core/diagram/shared-scale';
import type { NotSquared } from '../../core/diagram/squared-plane';
import type { Diagram, SharedScale } from '../../core/garment/diagram';
import type { ShownIn } from '../../core/units/inch';
import { Card } from '../ui/card';
import { Note } from '../ui/note';
import { Pick } from '../ui/pick';
import { diagramWords } from '../words/diagram';
import { editDiagram } from './change-diagram';
import { JoinFields } from './join-fields';

const words = diagramWords.together;

interface TogetherCardProps {
  readonly diagram: Diagram;
  readonly diagrams: readonly Diagram[];
  readonly map: DiagramMap | NotSquared;
  readonly shownIn: ShownIn;
}

/** How a picture goes with the other ones: whose scale it has, and which it goes on from over a gutter. */
export function TogetherCard({ diagram, diagrams, map, shownIn }: TogetherCardProps) {
  const others = diagrams.filter(({ id }) => mayLeanOn(diagrams, diagram.id, id));
  if (diagrams.length < 2) return null;
  return (
    <Card title={words.title} about="together">
      {others.length === 0 ? (
        <p>{words.othersLean}</p>
      ) : (
        <>
          <ScaleChoice {...{ diagram, others }} />
          <JoinFields {...{ diagram, others, map, shownIn }} />
        </>
      )}
    </Card>
  );
}

interface ScaleChoiceProps {
  readonly diagram: Diagram;
  readonly others: readonly Diagram[];
}

function ScaleChoice({ diagram, others }: ScaleChoiceProps) {
  const { scaleFrom } = diagram;
  const source = others.find(({ id }) => id === scaleFrom?.diagramId);
  const ways = source ? waysAlike(diagram, source) : [];
  const put = (next: SharedScale | undefined) =>
    editDiagram(diagramWords.labels.scaleFrom, diagram.id, ({ scaleFrom: _, ...bare }) =>
      next ? { ...bare, scaleFrom: next } : bare,
    );
  if (diagram.joined?.size === 'fitted') return null;
  return (
    <>
      <Pick
        label={words.scale}
        value={scaleFrom?.diagramId ?? ''}
        options={[
          { value: '', words: words.ownScale },
          ...others.map((other) => ({ value: other.id, words: words.sameAs(words.nameOf(other.name)) })),
        ]}
        onChange={(id) => {
          const other = others.find((each) => each.id === id);
          // Of two kinds that are not alike it is said that they are not; she may mend that afterwards.
          put(other && { diagramId: id, by: waysAlike(diagram, other)[0] ?? 'rectangle' });
        }}
      />
      {scaleFrom && ways.length > 1 && (
        <Pick
          label={words.alike}
          value={scaleFrom.by}
          options={ways.map((value) => ({ value, words: words.by[value] }))}
          onChange={(by) => put({ ...scaleFrom, by })}
        />
      )}
      {scaleFrom && ways.length === 1 && ways[0] === scaleFrom.by && <p>{words.because(words.by[scaleFrom.by])}</p>}
      {scaleFrom && !ways.includes(scaleFrom.by) && <Note tone="stop">{words.notAlike}</Note>}
    </>
  );
}

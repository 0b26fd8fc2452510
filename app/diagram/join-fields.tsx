import type { DiagramMap } from '../../core/diagram/diagram-map';
import { gutterPlaces, MEETING_SIDES, type MeetingSide } from '../../core/diagram/gutter';
import type { NotSquared } from '../../core/diagram/squared-plane';
import type { Diagram, Joined } from '../../core/garment/diagram';
import type { ShownIn } from '../../core/units/inch';
import { finestStep } from '../../core/units/write-length';
import { Button } from '../ui/button';
import { Choice } from '../ui/choice';
import { Note } from '../ui/note';
import { Pick } from '../ui/pick';
import { diagramWords } from '../words/diagram';
import { writeLength } from '../words/written';
import { useDesk } from './desk-store';
import styles from './diagram-room.module.css';
import { beginMatching, putJoined } from './matching';

const words = diagramWords.together;

interface JoinFieldsProps {
  readonly diagram: Diagram;
  readonly others: readonly Diagram[];
  readonly map: DiagramMap | NotSquared;
  readonly shownIn: ShownIn;
}

/** Lays this half of a diagram onto another: by places seen in both, or by the edges that meet in the gutter. */
export function JoinFields({ diagram, others, map, shownIn }: JoinFieldsProps) {
  const { joined } = diagram;
  const other = others.find(({ id }) => id === joined?.diagramId);
  const isMatching = useDesk(({ matching }) => matching !== undefined);
  const apart = (map.kind === 'map' && map.joint?.apart) || [];
  return (
    <>
      <Pick
        label={words.joined}
        value={joined?.diagramId ?? ''}
        options={[
          { value: '', words: words.alone },
          ...others.map(({ id, name }) => ({ value: id, words: words.nameOf(name) })),
        ]}
        onChange={(id) => putJoined(diagram.id, id === '' ? undefined : { diagramId: id, pairs: [], size: 'fitted' })}
      />
      {joined && other && (
        <>
          <p>{words.help(words.nameOf(other.name))}</p>
          <ol className={styles.places}>
            {joined.pairs.map((_, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: its letter is all that tells a place from another
              <Place key={index} {...{ diagram, joined, index, shownIn }} apart={apart[index]} />
            ))}
          </ol>
          <div className={styles.actions}>
            <Button icon="plus" disabled={isMatching} onPress={() => beginMatching(diagram.id, other.id)}>
              {words.give}
            </Button>
            <EdgesMeet {...{ diagram, other, joined }} />
          </div>
          {joined.pairs.length > 0 && (
            <Choice
              label={words.size}
              value={joined.size}
              options={(['fitted', 'own'] as const).map((value) => ({ value, words: words.sizes[value] }))}
              onChange={(size) => putJoined(diagram.id, { ...joined, size })}
            />
          )}
          <JointSaid {...{ joined, map, shownIn }} />
        </>
      )}
    </>
  );
}

interface PlaceProps {
  readonly diagram: Diagram;
  readonly joined: Joined;
  readonly index: number;
  readonly apart: number | undefined;
  readonly shownIn: ShownIn;
}

function Place({ diagram, joined, index, apart, shownIn }: PlaceProps) {
  const letter = words.letter(index);
  return (
    <li>
      <span>
        {words.place(letter)}
        {apart !== undefined && joined.pairs.length > 2 && (
          <span className={styles.hint}> {words.apart(finely(apart, shownIn))}</span>
        )}
      </span>
      <Button
        icon="bin"
        tone="quiet"
        title={words.removePlace(letter)}
        onPress={() => putJoined(diagram.id, { ...joined, pairs: joined.pairs.toSpliced(index, 1) })}
      />
    </li>
  );
}

interface EdgesMeetProps {
  readonly diagram: Diagram;
  readonly other: Diagram;
  readonly joined: Joined;
}

function EdgesMeet({ diagram, other, joined }: EdgesMeetProps) {
  return (
    <Pick
      label={words.edgesMeet}
      value=""
      options={[
        { value: '' as MeetingSide | '', words: words.chooseSide },
        ...MEETING_SIDES.map((value) => ({ value: value as MeetingSide | '', words: words.sides[value] })),
      ]}
      onChange={(side) => {
        if (side !== '') putJoined(diagram.id, { ...joined, pairs: gutterPlaces(diagram, other, side) });
      }}
    />
  );
}

interface JointSaidProps {
  readonly joined: Joined;
  readonly map: DiagramMap | NotSquared;
  readonly shownIn: ShownIn;
}

/** How well the two halves lie on one another. */
function JointSaid({ joined, map, shownIn }: JointSaidProps) {
  const joint = map.kind === 'map' ? map.joint : undefined;
  if (!joint) return <Note tone="plain">{words.needsTwo(joined.pairs.length)}</Note>;
  // Two places, made to fit, lie on one another whatever they are.
  if (joined.size === 'fitted' && joined.pairs.length === 2) return <Note tone="plain">{words.unchecked}</Note>;
  return <Note tone="good">{words.apartAtMost(finely(Math.max(...joint.apart), shownIn))}</Note>;
}

function finely(mm: number, shownIn: ShownIn): string {
  return writeLength(mm, { shownIn, step: finestStep(shownIn) });
}

import { timesInGarment } from '../../core/fit/whole-garment';
import { setStated } from '../../core/garment/edge-edits';
import { outlineOf } from '../../core/garment/outline';
import type { Edge, Piece, StatedOnEdge } from '../../core/garment/piece';
import { pathLength } from '../../core/geometry/path';
import { obeyFigures } from '../../core/shaping/obey-figures';
import { inches } from '../../core/units/inch';
import { useGarment } from '../state/garment-store';
import { useShownIn } from '../state/shown-in';
import { Choice } from '../ui/choice';
import { LengthField } from '../ui/length-field';
import { Note } from '../ui/note';
import { say } from '../ui/say';
import { draftWords as words } from '../words/draft';
import { writeLength } from '../words/written';
import styles from './draft.module.css';
import { editPiece } from './edit-piece';

/** Drawing and figure agree when they would be written alike on the finest ruler: a thirty-second of an inch. */
const AGREES = inches(1 / 64);

const RULING = ['unsettled', 'drawing', 'figure'] as const;

interface EdgeLengthsProps {
  readonly piece: Piece;
  readonly index: number;
  readonly edge: Edge;
}

/** How long an edge is drawn, what that makes of the whole garment, and the figure printed on the source. */
export function EdgeLengths({ piece, index, edge }: EdgeLengthsProps) {
  const shownIn = useShownIn();
  const garment = useGarment((state) => state.garment);
  const path = outlineOf(piece).edges[index];
  if (!path || !garment) return null;
  const drawn = pathLength(path);
  const inDarts = piece.darts.reduce((sum, dart) => (dart.edgeId === edge.id ? sum + dart.width : sum), 0);
  const times = timesInGarment(garment, piece);
  const write = (length: number) => writeLength(length, { shownIn });
  const { stated } = edge;

  const setFigure = (next: StatedOnEdge | undefined) =>
    editPiece(words.steps.stated, piece.id, (now) => setStated(now, edge.id, next));

  return (
    <>
      <dl className={styles.numbers}>
        <dt>{words.drawnLength}</dt>
        <dd>{write(drawn)}</dd>
        {inDarts > 0 && (
          <>
            <dt>{words.netLength}</dt>
            <dd>{write(drawn - inDarts)}</dd>
          </>
        )}
        {edge.role !== 'fold' && times > 1 && (
          <>
            <dt>{words.inWhole(times)}</dt>
            <dd>{write((drawn - inDarts) * times)}</dd>
          </>
        )}
      </dl>
      <LengthField
        label={words.stated}
        hint={words.statedHint}
        value={stated?.length}
        shownIn={shownIn}
        allowEmpty
        min={1}
        onCommit={(length) =>
          setFigure(length === undefined ? undefined : { length, rules: stated?.rules ?? 'unsettled' })
        }
      />
      {stated && (
        <Figure
          stated={stated}
          drawn={drawn}
          write={write}
          onRules={(rules) => setFigure({ ...stated, rules })}
          onObey={() => obey(piece, edge, index, stated, write)}
        />
      )}
    </>
  );
}

interface FigureProps {
  readonly stated: StatedOnEdge;
  readonly drawn: number;
  readonly write: (length: number) => string;
  readonly onRules: (rules: StatedOnEdge['rules']) => void;
  readonly onObey: () => void;
}

function Figure({ stated, drawn, write, onRules, onObey }: FigureProps) {
  const off = drawn - stated.length;
  const agrees = Math.abs(off) <= AGREES;
  return (
    <>
      {agrees ? (
        <Note tone="good">{words.agrees}</Note>
      ) : (
        <Note
          tone={stated.rules === 'drawing' ? 'plain' : 'warn'}
          {...(stated.rules === 'drawing' ? {} : { action: { words: words.obey, onPress: onObey } })}
        >
          {words.difference(write(Math.abs(off)), off > 0 ? 'longer' : 'shorter')}
        </Note>
      )}
      <Choice
        label={words.rules}
        value={stated.rules}
        options={RULING.map((value) => ({ value, words: words.ruling[value] }))}
        onChange={onRules}
      />
    </>
  );
}

function obey(piece: Piece, edge: Edge, index: number, stated: StatedOnEdge, write: (length: number) => string): void {
  const pulled = obeyFigures(piece, [{ edgeId: edge.id, length: stated.length }]);
  if ('kind' in pulled) {
    say(words.cannotObey);
    return;
  }
  editPiece(words.steps.obey, piece.id, () => pulled);
  say(words.obeyed(words.edgeOr(edge.name, index + 1), write(stated.length)));
}

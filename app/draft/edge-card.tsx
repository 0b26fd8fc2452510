import { addThrough, curveEdge, setEndRule, straighten } from '../../core/garment/curve-edits';
import { nameEdge, setAllowance, setRole } from '../../core/garment/edge-edits';
import { outlineOf } from '../../core/garment/outline';
import { EDGE_ROLES, type Edge, type EndRule, type Piece } from '../../core/garment/piece';
import { useShownIn } from '../state/shown-in';
import { useTable } from '../state/table-store';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Choice } from '../ui/choice';
import { LengthField } from '../ui/length-field';
import { Pick } from '../ui/pick';
import { TextField } from '../ui/text-field';
import { draftWords as words } from '../words/draft';
import { AddCorner } from './add-corner';
import { SameOnTheRest } from './allowance-rest';
import styles from './draft.module.css';
import { EdgeLengths } from './edge-lengths';
import { editPiece } from './edit-piece';
import { longestStretchMiddle } from './longest-stretch';

const RULES: readonly EndRule[] = ['free', 'square', 'in-line'];

interface EdgeCardProps {
  readonly piece: Piece;
  readonly index: number;
  readonly edge: Edge;
}

/** Everything one edge says: what it is, how it runs, how long it is and what is added to it. */
export function EdgeCard({ piece, index, edge }: EdgeCardProps) {
  const shownIn = useShownIn();
  const change = (label: string, how: (piece: Piece) => Piece) => editPiece(label, piece.id, how);
  const corners = [index + 1, ((index + 1) % piece.corners.length) + 1] as const;
  return (
    <Card title={words.edgeTitle(words.edgeOr(edge.name, index + 1))} about="edge" aside={words.fromTo(...corners)}>
      <TextField
        label={words.edgeNameField}
        value={edge.name}
        onCommit={(name) => change(words.steps.edge, (now) => nameEdge(now, edge.id, name.trim()))}
      />
      <div className={styles.says} data-step="allowance">
        <Pick
          label={words.role}
          value={edge.role}
          options={EDGE_ROLES.map((role) => ({ value: role, words: words.roles[role] }))}
          onChange={(role) => change(words.steps.edge, (now) => setRole(now, edge.id, role))}
        />
        {edge.role === 'fold' ? (
          <p className={styles.help}>{words.foldAllowance}</p>
        ) : (
          <LengthField
            label={words.allowance}
            value={edge.allowance}
            shownIn={shownIn}
            allowEmpty
            min={0}
            hint={words.allowanceHint}
            onCommit={(allowance) => change(words.steps.allowance, (now) => setAllowance(now, edge.id, allowance))}
          />
        )}
        {edge.allowance !== undefined && edge.role !== 'fold' && (
          <SameOnTheRest piece={piece} allowance={edge.allowance} />
        )}
      </div>
      <Choice
        label={words.shape}
        value={edge.shape.kind}
        options={[
          { value: 'straight', words: words.shapes.straight },
          { value: 'curve', words: words.shapes.curve },
        ]}
        onChange={(kind) =>
          change(words.steps.edge, (now) => (kind === 'curve' ? curveEdge(now, edge.id) : straighten(now, edge.id)))
        }
      />
      {edge.shape.kind === 'curve' && (
        <div className={styles.pair}>
          <Pick
            label={words.ruleAt(corners[0])}
            value={edge.shape.leaves}
            options={RULES.map((rule) => ({ value: rule, words: words.endRule[rule] }))}
            onChange={(rule) => change(words.steps.edge, (now) => setEndRule(now, edge.id, 'leaves', rule))}
          />
          <Pick
            label={words.ruleAt(corners[1])}
            value={edge.shape.meets}
            options={RULES.map((rule) => ({ value: rule, words: words.endRule[rule] }))}
            onChange={(rule) => change(words.steps.edge, (now) => setEndRule(now, edge.id, 'meets', rule))}
          />
        </div>
      )}
      <div className={styles.row}>
        <Button icon="curve" onPress={() => addPoint(piece, edge, index)}>
          {words.addThrough}
        </Button>
      </div>
      <AddCorner key={edge.id} piece={piece} index={index} edge={edge} />
      <EdgeLengths piece={piece} index={index} edge={edge} />
    </Card>
  );
}

/** A curve point in the middle of the longest stretch, chosen at once so that it can be moved. */
function addPoint(piece: Piece, edge: Edge, index: number): void {
  const at = longestStretchMiddle(outlineOf(piece).edges[index] ?? []);
  const added = at && addThrough(piece, edge.id, at);
  if (!added) return;
  editPiece(words.steps.addPoint, piece.id, (now) => addThrough(now, edge.id, at)?.piece ?? now);
  useTable.getState().choose({ kind: 'through', pieceId: piece.id, edgeId: edge.id, index: added.index });
}

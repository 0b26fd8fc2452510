import type { Piece } from '../../core/garment/piece';
import { DEGREE } from '../../core/units/degree';
import type { ShownIn } from '../../core/units/inch';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Choice } from '../ui/choice';
import { LengthField } from '../ui/length-field';
import { Note } from '../ui/note';
import { NumberField } from '../ui/number-field';
import { Pick } from '../ui/pick';
import { Switch } from '../ui/switch';
import { compareWords as words } from '../words/compare';
import styles from './compare.module.css';
import { type Comparison, compare, NOT_NUDGED, nudgeTo, useCompare } from './compare-store';
import { heldBy, howOf, type Laying } from './laying';
import { cornerName, edgeName, nameOf } from './names';

const HOWS = ['as-they-lie', 'corner', 'edge', 'best'] as const;

interface HowCardProps {
  readonly shownIn: ShownIn;
  readonly comparison: Comparison;
  readonly mine: Piece;
  readonly other: Piece;
  /** What each is called beside the other. */
  readonly names: { readonly mine: string; readonly other: string };
  readonly laying: Laying;
}

/** How the other piece is laid on the first, and how far it was moved by hand from there. */
export function HowCard({ shownIn, comparison, mine, other, names, laying }: HowCardProps) {
  const nudge = useCompare((state) => state.nudge);
  const how = howOf(comparison, mine, other);
  const held = heldBy(comparison, mine, other);
  const corners = (piece: Piece) => piece.corners.map(({ id }, i) => ({ value: id, words: cornerName(piece, i) }));
  const edges = (piece: Piece) => piece.edges.map(({ id }, i) => ({ value: id, words: edgeName(piece, i) }));
  const called = names.mine === names.other ? { mine: nameOf(mine), other: nameOf(other) } : names;
  return (
    <Card title={words.how} about="compare-how">
      <Choice
        label={words.how}
        labelHidden
        value={how}
        options={HOWS.map((value) => ({ value, words: words.hows[value] }))}
        onChange={(next) => compare({ how: next })}
      />
      <p className={styles.help}>{words.howHelp[how]}</p>
      {how === 'corner' && (
        <>
          <Pick
            label={words.corner(called.mine)}
            value={held.cornerId}
            options={corners(mine)}
            onChange={(corner) => compare({ corner })}
          />
          <Pick
            label={words.corner(called.other)}
            value={held.otherCornerId}
            options={corners(other)}
            onChange={(otherCorner) => compare({ otherCorner })}
          />
        </>
      )}
      {how === 'edge' && (
        <>
          <Pick
            label={words.edge(called.mine)}
            value={held.edgeId}
            options={edges(mine)}
            onChange={(edge) => compare({ edge })}
          />
          <Pick
            label={words.edge(called.other)}
            value={held.otherEdgeId}
            options={edges(other)}
            onChange={(otherEdge) => compare({ otherEdge })}
          />
          <Choice
            label={words.way}
            value={comparison.way}
            options={(['same', 'opposite'] as const).map((value) => ({ value, words: words.ways[value] }))}
            onChange={(way) => compare({ way })}
          />
        </>
      )}
      {how === 'best' ? (
        <Switch
          label={words.mirrored}
          on={comparison.mirrored === 'allowed'}
          onChange={(on) => compare({ mirrored: on ? 'allowed' : 'never', turned: false })}
        />
      ) : (
        <Switch label={words.turned} on={comparison.turned} onChange={(turned) => compare({ turned })} />
      )}
      {laying.kind === 'seeking' && (
        <div className={styles.row}>
          <p>{words.seeking}</p>
          <Button icon="close" onPress={laying.stop}>
            {words.stop}
          </Button>
        </div>
      )}
      {(laying.kind === 'stopped' || laying.kind === 'broken') && (
        <Note tone="warn" action={{ words: words.again, onPress: laying.again }}>
          {laying.kind === 'stopped' ? words.stopped : words.failed}
        </Note>
      )}
      {laying.kind === 'laid' && (
        <>
          <h3 className={styles.part}>{words.byHand}</h3>
          <p className={styles.help}>{words.byHandHelp}</p>
          <div className={styles.three}>
            <LengthField
              label={words.right}
              value={nudge.dx}
              shownIn={shownIn}
              onCommit={(dx) => dx !== undefined && nudgeTo({ ...nudge, dx })}
            />
            <LengthField
              label={words.down}
              value={nudge.dy}
              shownIn={shownIn}
              onCommit={(dy) => dy !== undefined && nudgeTo({ ...nudge, dy })}
            />
            <NumberField
              label={words.turn}
              value={Math.round((nudge.angle / DEGREE) * 100) / 100}
              least={-180}
              most={180}
              onCommit={(degrees) => nudgeTo({ ...nudge, angle: degrees * DEGREE })}
            />
          </div>
          <Button icon="undo" disabled={nudge === NOT_NUDGED} onPress={() => nudgeTo(NOT_NUDGED)}>
            {words.layBack}
          </Button>
        </>
      )}
    </Card>
  );
}

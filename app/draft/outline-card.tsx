import { useState } from 'react';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { edgeIndex } from '../../core/garment/with-piece';
import { pathLength } from '../../core/geometry/path';
import type { TablePoint } from '../../core/geometry/point';
import { useShownIn } from '../state/shown-in';
import { type Chosen, useTable } from '../state/table-store';
import { chosenAt, type Stop, stopsOf } from '../table/walk';
import { writeSquares } from '../table/write-squares';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { LengthField } from '../ui/length-field';
import { draftWords as words } from '../words/draft';
import { writeLength } from '../words/written';
import styles from './draft.module.css';
import { moveStop } from './point-keys';

/** The piece in words and numbers: every point and edge round it, and its marks. Points are moved by writing here. */
export function OutlineCard({ piece }: { readonly piece: Piece }) {
  const [open, setOpen] = useState(false);
  const shownIn = useShownIn();
  const chosen = useTable((table) => table.chosen);
  const choose = useTable((table) => table.choose);
  const { edges } = outlineOf(piece);
  const pieceId = piece.id;
  const place = (at: { readonly x: number; readonly y: number }) =>
    words.place(writeSquares(at.x, shownIn), writeSquares(at.y, shownIn));
  const point = (key: string, what: string, name: string, stop: Stop) => {
    const put = (to: Partial<TablePoint>) => moveStop(piece, stop, { ...stop.at, ...to });
    const choice = chosenAt(pieceId, stop);
    return (
      <li key={key} className={styles.place}>
        <Button tone="quiet" label={name} pressed={sameChoice(choice, chosen)} onPress={() => choose(choice)}>
          {what}
        </Button>
        <LengthField
          label={words.acrossOf(name)}
          labelHidden
          value={stop.at.x}
          shownIn={shownIn}
          onCommit={(x) => x !== undefined && put({ x })}
        />
        <LengthField
          label={words.downOf(name)}
          labelHidden
          value={stop.at.y}
          shownIn={shownIn}
          onCommit={(y) => y !== undefined && put({ y })}
        />
      </li>
    );
  };
  const line = (key: string, what: string, aside: string, choice: Chosen) => (
    <li key={key}>
      <Button tone="quiet" pressed={sameChoice(choice, chosen)} onPress={() => choose(choice)}>
        {what}
      </Button>
      <span className={styles.aside}>{aside}</span>
    </li>
  );
  return (
    <Card
      title={words.outline}
      about="outline"
      step="waist-edge"
      open={open}
      onToggle={setOpen}
      aside={words.cornerCount(piece.corners.length)}
    >
      {open && (
        <>
          <p className={styles.help}>{words.outlineHelp}</p>
          <p className={styles.place} aria-hidden="true">
            <span />
            <span className={styles.aside}>{words.across}</span>
            <span className={styles.aside}>{words.down}</span>
          </p>
          <ol className={styles.list} data-outline>
            {piece.edges.map((edge, index) => [
              ...stopsOf(piece)
                .filter((stop) => stop.kind === 'corner' && stop.number === index + 1)
                .map((stop) =>
                  point(`corner ${index}`, words.cornerNumber(index + 1), words.cornerNumber(index + 1), stop),
                ),
              line(
                `edge ${index}`,
                words.edgeOr(edge.name, index + 1),
                writeLength(pathLength(edges[index] ?? []), { shownIn }),
                { kind: 'edge', pieceId, edgeId: edge.id },
              ),
              ...stopsOf(piece)
                .filter((stop) => stop.kind === 'through' && stop.edgeId === edge.id)
                .map((stop, n) => {
                  const name = words.throughOn(n + 1, words.edgeOr(edge.name, index + 1));
                  return point(`through ${index} ${n}`, words.throughNumber(n + 1), name, stop);
                }),
            ])}
          </ol>
          <h3>{words.marks}</h3>
          <ul className={styles.list} data-outline>
            {piece.grain && line('grain', words.mark.grain, '', { kind: 'grain', pieceId })}
            {piece.darts.map((dart) =>
              line(dart.id, words.mark.dart, onEdge(piece, dart.edgeId), { kind: 'dart', pieceId, id: dart.id }),
            )}
            {piece.notches.map((notch) =>
              line(notch.id, words.mark.notch, onEdge(piece, notch.edgeId), { kind: 'notch', pieceId, id: notch.id }),
            )}
            {piece.labels.map((label) =>
              line(label.id, label.text || words.drillMark, place(label.at), { kind: 'label', pieceId, id: label.id }),
            )}
          </ul>
          {!piece.grain && piece.darts.length + piece.notches.length + piece.labels.length === 0 && (
            <p className={styles.help}>{words.noMarks}</p>
          )}
        </>
      )}
    </Card>
  );
}

function onEdge(piece: Piece, edgeId: string): string {
  const index = edgeIndex(piece, edgeId);
  return words.onEdge(words.edgeOr(piece.edges[index]?.name ?? '', index + 1));
}

function sameChoice(a: Chosen, b: Chosen): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

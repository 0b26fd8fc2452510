import { useState } from 'react';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { edgeIndex } from '../../core/garment/with-piece';
import { pathLength } from '../../core/geometry/path';
import { writeLength } from '../../core/units/write-length';
import { type Chosen, useTable } from '../state/table-store';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { draftWords as words } from '../words/draft';
import styles from './draft.module.css';
import { useShownIn } from './edit-piece';
import { chosenAt, stopsOf } from './walk';
import { writeSquares } from './write-squares';

/** The piece in words: every point and edge round it, and its marks. Pressing one chooses it on the table. */
export function OutlineCard({ piece }: { readonly piece: Piece }) {
  const [open, setOpen] = useState(false);
  const shownIn = useShownIn();
  const chosen = useTable((table) => table.chosen);
  const choose = useTable((table) => table.choose);
  const { edges } = outlineOf(piece);
  const place = (at: { readonly x: number; readonly y: number }) =>
    words.place(writeSquares(at.x, shownIn), writeSquares(at.y, shownIn));
  const line = (key: string, what: string, aside: string, choice: Chosen) => (
    <li key={key}>
      <Button tone="quiet" pressed={sameChoice(choice, chosen)} onPress={() => choose(choice)}>
        {what}
      </Button>
      <span className={styles.aside}>{aside}</span>
    </li>
  );
  const pieceId = piece.id;
  return (
    <Card title={words.outline} open={open} onToggle={setOpen} aside={words.cornerCount(piece.corners.length)}>
      {open && (
        <>
          <p className={styles.help}>{words.outlineHelp}</p>
          <ol className={styles.list} data-outline>
            {piece.edges.map((edge, index) => [
              ...stopsOf(piece)
                .filter((stop) => stop.kind === 'corner' && stop.number === index + 1)
                .map((stop) =>
                  line(`corner ${index}`, words.cornerNumber(index + 1), place(stop.at), chosenAt(pieceId, stop)),
                ),
              line(
                `edge ${index}`,
                words.edgeOr(edge.name, index + 1),
                writeLength(pathLength(edges[index] ?? []), { shownIn }),
                { kind: 'edge', pieceId, edgeId: edge.id },
              ),
              ...stopsOf(piece)
                .filter((stop) => stop.kind === 'through' && stop.edgeId === edge.id)
                .map((stop, n) =>
                  line(`through ${index} ${n}`, words.throughNumber(n + 1), place(stop.at), chosenAt(pieceId, stop)),
                ),
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

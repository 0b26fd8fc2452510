import { useMemo } from 'react';
import type { Garment } from '../../core/garment/garment';
import { Card } from '../ui/card';
import { seamsWords as words } from '../words/seams';
import { differenceWords, edgeName, finely, seamName, sidesName } from './seam-names';
import { looseEdges, notchesOff, type SeamLine, seamLines } from './seam-sums';
import styles from './seams.module.css';
import { openSeam } from './seams-store';
import { pressEdge } from './seams-tool';

/** Every seam with the lengths of its sides and how they differ, the worst first. */
export function SeamsList({ garment }: { readonly garment: Garment }) {
  const lines = useMemo(() => seamLines(garment), [garment]);
  return (
    <Card title={words.seams} about="seams" aside={lines.length > 0 ? lines.length : undefined}>
      {lines.length === 0 && <p className={styles.help}>{words.noSeams}</p>}
      {lines.length > 1 && <p className={styles.help}>{words.worstFirst}</p>}
      <ul className={styles.list}>
        {lines.map((line) => (
          <li key={line.seam.id}>
            <button
              type="button"
              className={styles.line}
              data-state={isInOrder(line) ? 'good' : 'wrong'}
              onClick={() => openSeam(line.seam.id)}
            >
              <strong>{seamName(garment, line.seam)}</strong>
              {line.seam.name.trim() !== '' && <small>{sidesName(garment, line.seam)}</small>}
              {line.walk && (
                <small>
                  {words.lengths(finely(garment, line.walk.totals.one), finely(garment, line.walk.totals.other))}
                </small>
              )}
              <span>{differenceWords(garment, line)}</span>
            </button>
          </li>
        ))}
      </ul>
    </Card>
  );
}

function isInOrder({ walk, isOwnMirror }: SeamLine): boolean {
  return walk !== undefined && (isOwnMirror || (walk.agrees && notchesOff(walk) === 0));
}

/** Seam edges nobody has paired yet; each can be picked here as on the table. */
export function LooseCard({ garment }: { readonly garment: Garment }) {
  const loose = useMemo(() => looseEdges(garment), [garment]);
  if (loose.length === 0) return null;
  return (
    <Card title={words.loose} about="loose-edges" aside={loose.length}>
      <ul className={styles.list}>
        {loose.map((ref) => (
          <li key={`${ref.pieceId} ${ref.edgeId}`}>
            <button
              type="button"
              className={styles.line}
              aria-label={words.pickLoose(edgeName(garment, ref))}
              onClick={() => pressEdge({ pieceId: ref.pieceId, edgeId: ref.edgeId })}
            >
              {edgeName(garment, ref)}
            </button>
          </li>
        ))}
      </ul>
    </Card>
  );
}

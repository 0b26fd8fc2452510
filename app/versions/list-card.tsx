import type { Garment } from '../../core/garment/garment';
import { type StoredVersion, versionNow } from '../../core/garment/version';
import { Card } from '../ui/card';
import { versionsWords as words } from '../words/versions';
import { type LookedAt, useLooking } from './looked-at';
import styles from './versions.module.css';

interface ListCardProps {
  readonly garment: Garment;
  readonly versions: readonly StoredVersion[];
  readonly at: LookedAt;
}

/** Every version, the newest first, and at the foot the draft as it was traced. */
export function ListCard({ garment, versions, at }: ListCardProps) {
  const now = versionNow(versions, garment)?.number;
  const look = (next: LookedAt) => useLooking.setState({ garmentId: garment.id, at: next });
  return (
    <Card title={words.list} about="versions" aside={versions.length > 0 ? String(versions.length) : undefined}>
      {versions.length === 0 && <p>{words.none}</p>}
      <ul className={styles.list}>
        {versions.toReversed().map((version) => {
          const { number, made, note } = version;
          const isHere = at.kind === 'version' && at.number === number;
          return (
            <li key={number}>
              <button
                type="button"
                className={styles.version}
                aria-pressed={isHere}
                onClick={() => look(isHere ? { kind: 'now' } : { kind: 'version', number })}
              >
                <strong>{words.numbered(version)}</strong>
                <span>
                  {words.date(made)}
                  {number === now && ` · ${words.isNow}`}
                </span>
                {note !== '' && <span className={styles.note}>{note}</span>}
              </button>
            </li>
          );
        })}
        <li>
          <button
            type="button"
            className={styles.version}
            aria-pressed={at.kind === 'traced'}
            onClick={() => look(at.kind === 'traced' ? { kind: 'now' } : { kind: 'traced' })}
          >
            <strong>{words.traced}</strong>
            <span>{words.tracedHelp}</span>
          </button>
        </li>
      </ul>
    </Card>
  );
}

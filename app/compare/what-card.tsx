import type { Garment } from '../../core/garment/garment';
import type { Piece } from '../../core/garment/piece';
import { BaseFields } from '../base/base-fields';
import { BASE_KINDS, firstOf } from '../base/first-block';
import { Card } from '../ui/card';
import { Note } from '../ui/note';
import { Pick } from '../ui/pick';
import { blockWords } from '../words/blocks';
import { compareWords as words } from '../words/compare';
import styles from './compare.module.css';
import { compare, type Source } from './compare-store';
import { nameOf } from './names';
import type { Kept, Other } from './other-garment';

interface WhatCardProps {
  readonly garment: Garment;
  readonly mine: Piece;
  readonly source: Source;
  readonly kept: Kept | undefined;
  readonly other: Other;
  /** The pieces the other one can be, and the one it is. */
  readonly others: readonly Piece[];
  readonly otherPiece: Piece | undefined;
}

/** Which piece, and which other piece is laid over it. */
export function WhatCard({ garment, mine, source, kept, other, others, otherPiece }: WhatCardProps) {
  return (
    <Card title={words.what} about="compare-what">
      <p className={styles.help}>{words.whatHelp}</p>
      <Pick
        label={words.mine}
        value={mine.id}
        options={garment.pieces.map((piece) => ({ value: piece.id, words: nameOf(piece) }))}
        onChange={(pieceId) => compare({ pieceId, corner: undefined, edge: undefined })}
      />
      <Pick
        label={words.source}
        value={sourceValue(source)}
        options={sourceOptions(garment, kept)}
        onChange={(value) => compare({ source: sourceFrom(value, garment), ...ANOTHER })}
      />
      {source.kind === 'draft' && (
        <>
          <Pick
            label={blockWords.block}
            value={source.block.kind as (typeof BASE_KINDS)[number]}
            options={BASE_KINDS.map((kind) => ({ value: kind, words: blockWords.kinds[kind] }))}
            onChange={(kind) => compare({ source: { kind: 'draft', block: firstOf(kind, garment) }, ...ANOTHER })}
          />
          <BaseFields
            block={source.block}
            shownIn={garment.shownIn}
            onChange={(block) => compare({ source: { kind: 'draft', block } })}
          />
        </>
      )}
      {other.kind === 'fetching' && <p className={styles.help}>{words.fetching}</p>}
      {other.kind === 'none' && <Note tone="warn">{other.sentence}</Note>}
      {other.kind === 'garment' && !otherPiece && <Note tone="plain">{words.noOtherPiece}</Note>}
      {otherPiece && others.length > 0 && (
        <Pick
          label={words.otherPiece}
          value={otherPiece.id}
          options={others.map((piece) => ({ value: piece.id, words: nameOf(piece) }))}
          onChange={(otherId) => compare({ otherId, otherCorner: undefined, otherEdge: undefined })}
        />
      )}
      {kept && kept.versions.length === 0 && kept.shelf.length === 0 && (
        <p className={styles.help}>{words.nothingKept}</p>
      )}
    </Card>
  );
}

const ANOTHER = { otherId: undefined, otherCorner: undefined, otherEdge: undefined } as const;

function sourceValue(source: Source): string {
  switch (source.kind) {
    case 'version':
      return `version ${source.number}`;
    case 'shelf':
      return `shelf ${source.garmentId}`;
    default:
      return source.kind;
  }
}

function sourceOptions(garment: Garment, kept: Kept | undefined) {
  return [
    { value: 'piece', words: words.sources.piece },
    ...(garment.traced ? [{ value: 'traced', words: words.sources.traced }] : []),
    ...(kept?.versions ?? [])
      .toReversed()
      .map(({ number, name }) => ({ value: `version ${number}`, words: words.version(number, name) })),
    ...(kept?.shelf ?? []).map(({ id, name }) => ({ value: `shelf ${id}`, words: words.shelf(name) })),
    { value: 'draft', words: words.sources.draft },
  ];
}

function sourceFrom(value: string, garment: Garment): Source {
  const rest = value.slice(value.indexOf(' ') + 1);
  if (value.startsWith('version ')) return { kind: 'version', number: Number(rest) };
  if (value.startsWith('shelf ')) return { kind: 'shelf', garmentId: rest };
  if (value === 'draft') return { kind: 'draft', block: firstOf('plain-skirt', garment) };
  return { kind: value === 'traced' ? 'traced' : 'piece' };
}

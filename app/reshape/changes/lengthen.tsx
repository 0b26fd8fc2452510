import type { Garment } from '../../../core/garment/garment';
import { outlineOf } from '../../../core/garment/outline';
import { pieceOf } from '../../../core/garment/with-piece';
import { nearestOnPath, pathAtLength, pathLength } from '../../../core/geometry/path';
import { line, type Path } from '../../../core/geometry/segment';
import { HALF_AT_HEM, lengthenRing, lineAcrossPiece } from '../../../core/shaping/lengthen-garment';
import { inches } from '../../../core/units/inch';
import { Choice } from '../../ui/choice';
import { LengthField } from '../../ui/length-field';
import { Pick } from '../../ui/pick';
import { reshapeWords } from '../../words/reshape';
import type { Change, Trying } from '../change';
import { chosenPiece } from '../edge-choice';
import { rounded } from '../rounded';

const words = reshapeWords.lengthen;
const WHERES = ['line', 'hem', 'half'] as const;

interface Lengthen {
  readonly pieceId: string;
  /** Only that piece, or every piece of its ring that the line meets. */
  readonly whole: 'piece' | 'ring';
  readonly where: (typeof WHERES)[number];
  readonly depth: number;
  readonly way: 'longer' | 'shorter';
  readonly by: number;
}

export const lengthenChange: Change = {
  name: 'lengthen',
  icon: 'down',
  begin(garment, chosen) {
    const piece = chosenPiece(garment, chosen) ?? garment.pieces[0];
    if (!piece) return { kind: 'first', sentence: reshapeWords.noPieces };
    const whole = ringOf(garment, piece.id) ? 'ring' : 'piece';
    return trying({ pieceId: piece.id, whole, where: 'line', depth: inches(13), way: 'longer', by: inches(1) });
  },
};

function ringOf(garment: Garment, pieceId: string) {
  return garment.rings.find(({ members }) => members.some((member) => member.pieceId === pieceId));
}

function membersOf(garment: Garment, { pieceId, whole }: Lengthen) {
  return whole === 'ring' ? (ringOf(garment, pieceId)?.members ?? [{ pieceId }]) : [{ pieceId }];
}

function trying(wish: Lengthen): Trying {
  const by = wish.way === 'longer' ? wish.by : -wish.by;
  return {
    name: 'lengthen',
    label: () => words.label[wish.way],
    make(garment) {
      const atHem = { line: 0, hem: 1, half: HALF_AT_HEM }[wish.where];
      const made = lengthenRing(garment, { members: membersOf(garment, wish) }, { depth: wish.depth, by, atHem });
      if (!('why' in made)) return { kind: 'tried', garment: made };
      const name = made.pieceId === undefined ? '' : (pieceOf(garment, made.pieceId)?.name ?? '');
      return { kind: 'not-tried', sentence: words.refused(made.why, name) };
    },
    fields: (garment, set) => <Fields wish={wish} garment={garment} onChange={(next) => set(trying(next))} />,
    lines: (garment) =>
      wish.where === 'hem' ? [] : acrossLines(garment, wish).map((path) => ({ path, look: 'cut' as const })),
    grips(garment) {
      const piece = pieceOf(garment, wish.pieceId);
      const across = piece && lineAcrossPiece(piece, wish.depth);
      const waist = piece && outlineOf(piece).edges[piece.edges.findIndex(({ role }) => role === 'waist')];
      if (!across || !waist || wish.where === 'hem') return [];
      const path: Path = [line(across.from, across.to)];
      return [
        {
          at: pathAtLength(path, pathLength(path) / 2).point,
          moved: (to) => trying({ ...wish, depth: Math.max(0, rounded(nearestOnPath(waist, to).distance)) }),
        },
      ];
    },
    picks: (_, chosen) => ('pieceId' in chosen ? trying({ ...wish, pieceId: chosen.pieceId }) : undefined),
  };
}

function acrossLines(garment: Garment, wish: Lengthen): Path[] {
  return membersOf(garment, wish).flatMap(({ pieceId }) => {
    const piece = pieceOf(garment, pieceId);
    const across = piece && lineAcrossPiece(piece, wish.depth);
    return across ? [[line(across.from, across.to)]] : [];
  });
}

interface FieldsProps {
  readonly wish: Lengthen;
  readonly garment: Garment;
  readonly onChange: (wish: Lengthen) => void;
}

function Fields({ wish, garment, onChange }: FieldsProps) {
  const change = (next: Partial<Lengthen>) => onChange({ ...wish, ...next });
  const hasRing = ringOf(garment, wish.pieceId) !== undefined;
  return (
    <>
      <Pick
        label={reshapeWords.piece}
        value={wish.pieceId}
        options={garment.pieces.map(({ id, name }) => ({ value: id, words: name }))}
        onChange={(pieceId) => change({ pieceId })}
      />
      {hasRing && (
        <Choice
          label={words.whole}
          value={wish.whole}
          options={(['ring', 'piece'] as const).map((value) => ({ value, words: words.wholes[value] }))}
          onChange={(whole) => change({ whole })}
        />
      )}
      <Choice
        label={words.way}
        value={wish.way}
        options={(['longer', 'shorter'] as const).map((value) => ({ value, words: words.ways[value] }))}
        onChange={(way) => change({ way })}
      />
      <LengthField
        label={words.by}
        value={wish.by}
        shownIn={garment.shownIn}
        min={0}
        onCommit={(by) => by !== undefined && change({ by })}
      />
      <Choice
        label={words.where}
        value={wish.where}
        options={WHERES.map((value) => ({ value, words: words.wheres[value] }))}
        onChange={(where) => change({ where })}
      />
      {wish.where !== 'hem' && (
        <LengthField
          label={words.depth}
          value={wish.depth}
          shownIn={garment.shownIn}
          min={0}
          onCommit={(depth) => depth !== undefined && change({ depth })}
        />
      )}
    </>
  );
}

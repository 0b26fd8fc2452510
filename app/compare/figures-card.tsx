import type { ShownIn } from '../../core/units/inch';
import { Figures } from '../trial/figures';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { compareWords as words } from '../words/compare';
import styles from './compare.module.css';
import type { Compared, Pair } from './figures';
import { edgeName } from './names';
import { LEAST_SHOWN } from './paint-compare';
import { placeOf } from './sentences';
import { finely } from './write';

interface FiguresCardProps {
  readonly pair: Pair;
  readonly compared: Compared;
  readonly names: { readonly under: string; readonly over: string };
  readonly sentences: readonly string[];
  readonly shownIn: ShownIn;
  readonly onGuide: () => void;
}

/** Every difference in numbers, and again in words. */
export function FiguresCard({ pair, compared, names, sentences, shownIn, onGuide }: FiguresCardProps) {
  const write = (mm: number) => finely(mm, shownIn);
  const wide = (mm: number | undefined) => (mm !== undefined && mm >= LEAST_SHOWN ? write(mm) : undefined);
  const { gap, gaps } = compared;
  const where = gap.width >= LEAST_SHOWN ? placeOf(pair.under, gap, shownIn) : undefined;
  return (
    <>
      <Card title={words.figures} about="compare-figures">
        <Figures
          label={words.largest}
          rows={[
            { words: words.largest, value: wide(gap.width) ?? words.nowhere },
            { words: words.out, value: wide(gaps.out?.width) ?? words.nowhere },
            { words: words.in, value: wide(gaps.in?.width) ?? words.nowhere },
          ]}
        />
        {where && <p className={styles.help}>{where}</p>}
        <table className={styles.figures}>
          <caption className="only-heard">{words.figuresLabel}</caption>
          <thead>
            <tr>
              <th scope="col">{words.headings.what}</th>
              <th scope="col">{names.under}</th>
              <th scope="col">{names.over}</th>
              <th scope="col">{words.headings.difference}</th>
            </tr>
          </thead>
          <Rows title={words.edges} rows={edgeRows(pair, compared, write, wide)} />
          <Rows title={words.girths} rows={girthRows(compared, write)} />
          <Rows title={words.widths} rows={widthRows(compared, write)} />
          <Rows title={words.area} rows={areaRows(compared, shownIn)} />
        </table>
      </Card>
      <Card title={words.inWords} about="compare-words">
        {sentences.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
        <Button icon="piece" onPress={onGuide}>
          {words.guide}
        </Button>
        <p className={styles.help}>{words.guideHelp}</p>
      </Card>
    </>
  );
}

interface Row {
  readonly key: string;
  readonly what: string;
  readonly more?: string;
  readonly one: string;
  readonly other: string;
  readonly difference: string;
}

function Rows({ title, rows }: { readonly title: string; readonly rows: readonly Row[] }) {
  if (rows.length === 0) return null;
  return (
    <tbody>
      <tr>
        <th scope="colgroup" colSpan={4} className={styles.group}>
          {title}
        </th>
      </tr>
      {rows.map(({ key, what, more, one, other, difference }) => (
        <tr key={key}>
          <th scope="row">
            {what}
            {more && <small>{more}</small>}
          </th>
          <td>{one}</td>
          <td>{other}</td>
          <td>{difference}</td>
        </tr>
      ))}
    </tbody>
  );
}

type Write = (mm: number) => string;

function lengths(one: number | undefined, other: number | undefined, write: Write, absent: string) {
  return {
    one: one === undefined ? absent : write(one),
    other: other === undefined ? absent : write(other),
    difference: one === undefined || other === undefined ? '' : words.signed(other - one, write(other - one)),
  };
}

function edgeRows(
  { under, over }: Pair,
  { edges }: Compared,
  write: Write,
  wide: (mm: number | undefined) => string | undefined,
): Row[] {
  return edges.flatMap(({ one, other, gaps }, index) => {
    const [piece, edge] = one ? [under, one.edge] : [over, other?.edge];
    if (!edge) return [];
    const more = words.gapsOf(wide(gaps?.out?.width), wide(gaps?.in?.width));
    return [
      {
        key: `${index} ${edge.id}`,
        what: edgeName(piece, piece.edges.indexOf(edge)),
        ...(more === '' ? {} : { more }),
        ...lengths(one?.length, other?.length, write, words.noEdge),
      },
    ];
  });
}

function girthRows({ girths }: Compared, write: Write): Row[] {
  return girths.map(({ level, one, other }) => ({
    key: level.id,
    what: words.level(level),
    ...lengths(one, other, write, words.notReached),
  }));
}

function widthRows({ levels }: Compared, write: Write): Row[] {
  return levels.map(({ depth, one, other }) => ({
    key: String(depth),
    what: depth === 0 ? words.atWaist : words.atDepth(write(depth)),
    ...lengths(one, other, write, words.notReached),
  }));
}

function areaRows({ areas: [one, other] }: Compared, shownIn: ShownIn): Row[] {
  const write = (area: number) => words.areaIn(area, shownIn);
  return [{ key: 'area', what: words.area, ...lengths(one, other, write, '') }];
}

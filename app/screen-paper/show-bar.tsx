import { useState } from 'react';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import type { Box } from '../../core/geometry/bounds';
import { pathBounds } from '../../core/geometry/path';
import type { TablePoint } from '../../core/geometry/point';
import type { CalibrationLook } from '../../core/screen/calibration';
import type { Lying } from '../../core/screen/full-size';
import { tableInSight, type Way } from '../../core/screen/pan-steps';
import { Button } from '../ui/button';
import { Choice } from '../ui/choice';
import { Pick } from '../ui/pick';
import { svgPath } from '../ui/svg-path';
import { Switch } from '../ui/switch';
import type { Awake } from '../ui/use-awake';
import { screenPaperWords as words } from '../words/screen-paper';
import { writeLength } from '../words/written';
import type { Look } from './paint-full-size';
import styles from './screen-paper.module.css';
import type { FullScreen } from './use-full-screen';

interface ShowBarProps extends CalibrationLook {
  readonly piece: Piece;
  readonly pieces: readonly Piece[];
  readonly look: Look;
  readonly lying: Lying;
  readonly sight: Box;
  readonly origin: TablePoint;
  readonly shownIn: 'in' | 'cm';
  readonly kind: 'screen' | 'beam';
  readonly date: string;
  readonly awake: Awake;
  readonly fullScreen: FullScreen;
  readonly onLook: (look: Look) => void;
  readonly onPiece: (id: string) => void;
  readonly onStep: (way: Way) => void;
  readonly onTurn: () => void;
  readonly onHome: () => void;
  readonly onCheck: () => void;
  readonly onLock: () => void;
  readonly onAnew: () => void;
  readonly onClose: () => void;
}

const ARROWS: readonly Way[] = ['left', 'up', 'down', 'right'];

/** Which part is in sight and how it looks; folded away for all but the steps, so that it covers little. */
export function ShowBar(props: ShowBarProps) {
  const { piece, pieces, look, lying, sight, origin, shownIn, unlike, pixel, kind, date, awake, fullScreen } = props;
  const [more, setMore] = useState(false);
  const box = tableInSight(sight, lying);
  const say = (mm: number) => writeLength(mm, { shownIn });
  return (
    <section className={styles.buttons} aria-label={words.buttons}>
      {more && (
        <div className={styles.more}>
          {pieces.length > 1 && (
            <Pick
              label={words.piece}
              value={piece.id}
              options={pieces.map(({ id, name }) => ({ value: id, words: name || words.unnamed }))}
              onChange={props.onPiece}
            />
          )}
          <Choice
            label={words.ground}
            value={look.ground}
            options={[
              { value: 'black', words: words.whiteOnBlack },
              { value: 'white', words: words.blackOnWhite },
            ]}
            onChange={(ground) => props.onLook({ ...look, ground })}
          />
          <Choice
            label={words.line}
            value={String(look.line)}
            options={[2, 4, 8].map((line, index) => ({ value: String(line), words: words.lines[index] ?? '' }))}
            onChange={(line) => props.onLook({ ...look, line: Number(line) })}
          />
          <Switch label={words.grid} on={look.grid} onChange={(grid) => props.onLook({ ...look, grid })} />
          <Switch label={words.square} on={look.square} onChange={(square) => props.onLook({ ...look, square })} />
          <div className={styles.row}>
            <Button onPress={props.onAnew}>{words.anew[kind]}</Button>
            {fullScreen.can && (
              <Button icon="fit" pressed={fullScreen.is} onPress={fullScreen.toggle}>
                {words.fill}
              </Button>
            )}
          </div>
          <p>
            {words.measuredOn(date)} {words.pixel(pixel.across, pixel.down)} {words.awake[awake]}
          </p>
        </div>
      )}
      {unlike !== undefined && <p className={styles.wrong}>{words.unlike(unlike)}</p>}
      <p>
        <strong>{words.caution}</strong>{' '}
        {words.inSight(
          [say(box.minX - origin.x), say(box.maxX - origin.x)],
          [say(box.minY - origin.y), say(box.maxY - origin.y)],
        )}
      </p>
      <div className={styles.row}>
        <Whole piece={piece} box={box} lying={lying} />
        {ARROWS.map((way) => (
          <Button key={way} icon={way} title={words.step[way]} onPress={() => props.onStep(way)} />
        ))}
        <Button icon="turn" title={words.turn} onPress={props.onTurn} />
        <Button icon="corner" title={words.home} onPress={props.onHome} />
        <Button icon="ruler" onPress={props.onCheck}>
          {words.check}
        </Button>
        <Button icon="more" pressed={more} title={words.more} onPress={() => setMore(!more)} />
        <Button tone="chalk" icon="hand" onPress={props.onLock}>
          {words.lock}
        </Button>
        <Button icon="close" title={words.close} onPress={props.onClose} />
      </div>
    </section>
  );
}

/** The whole piece small, as it lies, with the part in sight framed. */
function Whole({ piece, box, lying }: { readonly piece: Piece; readonly box: Box; readonly lying: Lying }) {
  const { whole } = outlineOf(piece);
  const { minX, minY, maxX, maxY } = pathBounds(whole);
  const [x, y] = [(minX + maxX) / 2, (minY + maxY) / 2];
  const reach = Math.max(maxX - minX, maxY - minY) * 0.6;
  return (
    <svg className={styles.small} viewBox={`${x - reach} ${y - reach} ${2 * reach} ${2 * reach}`} aria-hidden="true">
      <g transform={`rotate(${lying.turns * 90} ${x} ${y})`}>
        <path className={styles.outline} d={svgPath(whole)} />
        <rect
          className={styles.sight}
          x={box.minX}
          y={box.minY}
          width={box.maxX - box.minX}
          height={box.maxY - box.minY}
        />
      </g>
    </svg>
  );
}

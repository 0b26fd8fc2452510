import { useLayoutEffect, useRef, useState } from 'react';
import { pieceBounds } from '../../core/drawing/piece-bounds';
import { pieceDrawing } from '../../core/drawing/piece-drawing';
import type { Garment } from '../../core/garment/garment';
import type { Piece } from '../../core/garment/piece';
import { transformPoint } from '../../core/geometry/affine';
import { inkPlaces } from '../../core/paper/page-plan';
import { type Calibration, calibrationLook, mendedBy, type ScreenMap } from '../../core/screen/calibration';
import { type Lying, onPlane } from '../../core/screen/full-size';
import { fromItsCorner, planeInSight, type ScreenSize, stepped, type Way } from '../../core/screen/pan-steps';
import { testSquare } from '../../core/screen/test-square';
import { squareSize } from '../../core/units/inch';
import { Note } from '../ui/note';
import type { Awake } from '../ui/use-awake';
import { paperSheetWords } from '../words/paper-sheet';
import { screenPaperWords as words } from '../words/screen-paper';
import { writeLength } from '../words/written';
import { Locked } from './locked';
import { type Look, paintFullSize, type Shown } from './paint-full-size';
import styles from './screen-paper.module.css';
import { ShowBar } from './show-bar';
import { SquareCheck } from './square-check';
import type { FullScreen } from './use-full-screen';

interface FullSizeProps {
  readonly garment: Garment;
  readonly pieces: readonly Piece[];
  readonly kind: 'screen' | 'beam';
  readonly size: ScreenSize;
  readonly map: ScreenMap;
  readonly calibration: Calibration;
  readonly date: string;
  readonly fullScreen: FullScreen;
  readonly awake: Awake;
  readonly onMend: (calibration: Calibration) => void;
  readonly onAnew: () => void;
  readonly onClose: () => void;
}

/** A piece at full size on the screen, moved on in whole squares of its grid. */
export function FullSize(props: FullSizeProps) {
  const { garment, pieces, kind, size, map, calibration } = props;
  const { shownIn } = garment;
  const [pieceId, setPieceId] = useState(pieces[0]?.id);
  const [look, setLook] = useState<Look>({ ground: 'black', line: 4, grid: true, square: true });
  const [shift, setShift] = useState<{ readonly of: string; readonly lying: Lying }>();
  const [isLocked, setLocked] = useState(false);
  const [checks, setChecks] = useState(false);
  const canvas = useRef<HTMLCanvasElement>(null);
  const piece = pieces.find(({ id }) => id === pieceId) ?? (pieces[0] as Piece);
  const sight = planeInSight(map, size);
  const square = squareSize(shownIn);
  const bounds = pieceBounds(piece);
  const origin = { x: Math.floor(bounds.minX / square) * square, y: Math.floor(bounds.minY / square) * square };
  const home = (turns: Lying['turns']): Lying =>
    sight ? fromItsCorner(bounds, turns, sight, origin, square) : { from: origin, turns };
  const lying = shift?.of === piece.id ? shift.lying : home(0);
  const put = (next: Lying) => setShift({ of: piece.id, lying: next });
  const way = onPlane(lying);
  const drawn = inkPlaces(pieceDrawing(piece)).map((place) => transformPoint(way, place));
  const test = sight && testSquare(sight, shownIn, drawn);
  const side = test?.side ?? square;
  const say = (mm: number) => writeLength(mm, { shownIn, unit: 'left-off' });
  const said = writeLength(side, { shownIn });
  const paper = paperSheetWords(shownIn, 'sixteenth');
  const shown: Shown | undefined = sight &&
    test && {
      ...{ map, lying, size, sight },
      // It is there while it is measured, though it was put away.
      look: { ...look, square: look.square || checks },
      marks: pieceDrawing(piece),
      grid: { origin, square, say },
      test: { ...test, says: said },
      words: (mark) => paper.content(mark.content),
    };

  useLayoutEffect(() => {
    const ink = canvas.current?.getContext('2d');
    if (!ink || !shown) return;
    const ratio = window.devicePixelRatio;
    ink.canvas.width = Math.round(size.width * ratio);
    ink.canvas.height = Math.round(size.height * ratio);
    ink.setTransform(ratio, 0, 0, ratio, 0, 0);
    paintFullSize(ink, shown);
  });

  if (!sight) return <Note tone="stop">{words.noMap.corners}</Note>;
  const { unlike, pixel } = calibrationLook(map, calibration, kind);
  const step = (way: Way) => put(stepped(lying, way, sight, square));
  return (
    <>
      <div
        className={styles.whole}
        role="application"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a drawing moved on by keys needs the focus
        tabIndex={0}
        aria-label={words.drawing(piece.name)}
        onKeyDown={(event) => {
          const way = WAYS[event.key];
          if (!way || isLocked) return;
          event.preventDefault();
          step(way);
        }}
      >
        <canvas ref={canvas} className={styles.whole} style={{ width: size.width, height: size.height }} />
      </div>
      {isLocked ? (
        <Locked onUnlock={() => setLocked(false)} />
      ) : checks ? (
        <SquareCheck
          {...{ side, said, shownIn }}
          onMend={(measured) => {
            props.onMend(mendedBy(calibration, side, measured));
            setChecks(false);
          }}
          onClose={() => setChecks(false)}
        />
      ) : (
        <ShowBar
          {...{ piece, pieces, look, lying, sight, origin, shownIn, unlike, pixel, kind }}
          date={props.date}
          awake={props.awake}
          fullScreen={props.fullScreen}
          onLook={setLook}
          onPiece={setPieceId}
          onStep={step}
          onTurn={() => put(home(((lying.turns + 1) % 4) as Lying['turns']))}
          onHome={() => put(home(lying.turns))}
          onCheck={() => setChecks(true)}
          onLock={() => setLocked(true)}
          onAnew={props.onAnew}
          onClose={props.onClose}
        />
      )}
    </>
  );
}

const WAYS: Readonly<Record<string, Way>> = {
  ArrowLeft: 'left',
  ArrowRight: 'right',
  ArrowUp: 'up',
  ArrowDown: 'down',
};

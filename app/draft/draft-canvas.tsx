import { type ReactNode, useCallback, useMemo } from 'react';
import { Layer } from 'react-konva/lib/ReactKonvaCore';
import { diagramMap } from '../../core/diagram/diagram-map';
import { halvesOf } from '../../core/diagram/halves';
import { boxAround } from '../../core/diagram/squared-picture';
import type { Diagram } from '../../core/garment/diagram';
import type { MeasureSet } from '../../core/garment/measure';
import { currentSet } from '../../core/garment/measure-value';
import { outlineOf } from '../../core/garment/outline';
import { type Box, unionBox } from '../../core/geometry/bounds';
import { pathBounds } from '../../core/geometry/path';
import { inches } from '../../core/units/inch';
import { type LaidPicture, PictureShape } from '../photo/picture-shape';
import { useCleaned } from '../photo/use-cleaned';
import { useDiagramPictures } from '../photo/use-pictures';
import { useGarment } from '../state/garment-store';
import { useShownIn } from '../state/shown-in';
import { diagramInHand, useTable } from '../state/table-store';
import { Grid, RulerNumbers } from '../table/grid';
import { SQUARES } from '../table/squares';
import type { View } from '../table/view';
import { Viewport } from '../table/viewport';
import { useLook } from '../ui/look';
import { draftWords as words } from '../words/draft';
import { adjustTool } from './adjust-tool';
import { AsTraced } from './as-traced';
import { BodyLinesOf } from './body-lines';
import { useDraft } from './draft-store';
import { FollowUnder } from './follow-under';
import { markTool } from './mark-tools';
import { chosenPieceId, PieceInHand, QuietPiece, usePieceIds } from './pieces-layer';
import { ReadOut } from './read-out';
import { ToolMarks } from './tool-marks';
import { traceTool } from './trace-tool';

/** What is shown when nothing is there yet: room for a skirt panel. */
const EMPTY: Box = { minX: -inches(2), minY: -inches(2), maxX: inches(30), maxY: inches(42) };

/** In the evening less of a white page shines through, so that pale lines stand out on it. */
const EVENING = 0.5;

/** From the whole of a coat on a phone to a millimetre as wide as a thumb (CSS pixels to a mm). */
const MIN_SCALE = 0.02;
const MAX_SCALE = 60;

/** The table with the picture in hand under it, and those that are joined to it. */
export function DraftCanvas() {
  const diagrams = useGarment((state) => state.garment?.diagrams);
  const set = useGarment((state) => state.garment && currentSet(state.garment));
  const inHand = useTable((table) => diagramInHand(diagrams ?? [], table.diagramInHand));
  return diagrams && inHand && set ? (
    <CanvasOver diagram={inHand} diagrams={diagrams} set={set} />
  ) : (
    <Canvas picture={undefined} printed={undefined} />
  );
}

interface CanvasOverProps {
  readonly diagram: Diagram;
  readonly diagrams: readonly Diagram[];
  readonly set: MeasureSet;
}

function CanvasOver({ diagram, diagrams, set }: CanvasOverProps) {
  const pictures = useDiagramPictures(diagram, set, diagrams);
  const { laidFlat, map } = pictures;
  const halves = useMemo(() => halvesOf(diagrams, diagram.id).toReversed(), [diagrams, diagram.id]);
  const printed = useMemo(() => printedBox(halves, diagrams, set), [halves, diagrams, set]);
  const picture = useCleaned(diagram.id, laidFlat);
  return (
    <>
      <FollowUnder pictures={pictures.pictures} map={map} />
      <Canvas picture={picture} printed={printed}>
        {(strength) =>
          halves.map((half) =>
            half.id === diagram.id ? (
              picture && <PictureShape key={half.id} {...picture} strength={strength} />
            ) : (
              <OtherHalf key={half.id} {...{ diagrams, set, strength }} diagram={half} />
            ),
          )
        }
      </Canvas>
    </>
  );
}

/** A picture that is seen together with the one in hand. */
function OtherHalf({ diagram, diagrams, set, strength }: CanvasOverProps & { readonly strength: number }) {
  const { laidFlat } = useDiagramPictures(diagram, set, diagrams);
  const picture = useCleaned(diagram.id, laidFlat);
  return picture && <PictureShape {...picture} strength={strength} />;
}

/** Where the rectangles she squared the pictures up by lie on the table: what is printed, without the desk round it. */
function printedBox(halves: readonly Diagram[], diagrams: readonly Diagram[], set: MeasureSet): Box | undefined {
  const boxes = halves.flatMap((half) => {
    const map = diagramMap(half, set, diagrams);
    return map.kind === 'map' ? [boxAround(map, 0)] : [];
  });
  return boxes.length > 0 ? boxes.reduce(unionBox) : undefined;
}

interface CanvasProps {
  /** The picture in hand. */
  readonly picture: LaidPicture | undefined;
  readonly printed: Box | undefined;
  /** The pictures, at some strength. */
  readonly children?: (strength: number) => ReactNode;
}

function Canvas({ picture, printed, children }: CanvasProps) {
  const shownIn = useShownIn();
  const view = useTable((table) => table.view.table);
  const setView = useTable((table) => table.setView);
  const photoShown = useTable((table) => table.photoShown);
  const tracedShown = useTable((table) => table.tracedShown);
  const photoStrength = useTable((table) => table.photoStrength);
  const pieceId = useTable((table) => chosenPieceId(table.chosen));
  const ids = usePieceIds();
  const mode = useDraft((draft) => draft.mode);
  const marking = useDraft((draft) => draft.marking);
  const tool = useMemo(
    () => (mode === 'trace' ? traceTool() : mode === 'mark' ? markTool(marking) : adjustTool()),
    [mode, marking],
  );
  const fit = useFit(printed);
  const onView = useCallback((next: View) => setView('table', next), [setView]);
  const squares = SQUARES[shownIn];
  const light = useLook((look) => (look.shown === 'dark' ? EVENING : 1));
  return (
    <Viewport
      view={view}
      onView={onView}
      fit={fit}
      tool={tool}
      label={words.canvas}
      lying={{ pieces: piecesNow, shownIn }}
      minScale={MIN_SCALE}
      maxScale={MAX_SCALE}
      overlay={() => <ReadOut mmPerPx={photoShown && picture ? mmPerPx(picture) : undefined} />}
    >
      {() => (
        <>
          <Layer listening={false}>
            {photoShown && children?.(photoStrength * light)}
            <Grid squares={squares} />
          </Layer>
          <Layer listening={false}>
            {tracedShown && <AsTraced />}
            {ids.map((id) => (
              <QuietPiece key={id} pieceId={id} />
            ))}
          </Layer>
          <Layer listening={false}>
            <PieceInHand shownIn={shownIn} grips={mode === 'adjust' ? 'shown' : 'hidden'} />
            <ToolMarks shownIn={shownIn} />
          </Layer>
          <Layer listening={false}>
            {pieceId !== undefined && <BodyLinesOf pieceId={pieceId} shownIn={shownIn} />}
            <RulerNumbers squares={squares} />
          </Layer>
        </>
      )}
    </Viewport>
  );
}

/** Asked for when a key is pressed, so that a drag need not wake the whole canvas. */
function piecesNow() {
  return useGarment.getState().garment?.pieces ?? [];
}

/** How much of the table one pixel of the picture covers across. */
function mmPerPx({ levels, box }: LaidPicture): number | undefined {
  const finest = levels[0];
  return finest && finest.width > 0 ? (box.maxX - box.minX) / finest.width : undefined;
}

/** Everything there is on the table, what is printed and the pieces, as it was when one of them came or went. */
function useFit(printed: Box | undefined): Box {
  const ids = usePieceIds();
  return useMemo(() => {
    const pieces = (useGarment.getState().garment?.pieces ?? []).filter((piece) => ids.includes(piece.id));
    const boxes = pieces.map((piece) => pathBounds(outlineOf(piece).whole));
    if (printed) boxes.push(printed);
    return boxes.length > 0 ? boxes.reduce(unionBox) : EMPTY;
  }, [ids, printed]);
}

import { useCallback, useMemo } from 'react';
import { Layer } from 'react-konva/lib/ReactKonvaCore';
import type { DiagramMap } from '../../core/diagram/diagram-map';
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
import { useTable } from '../state/table-store';
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
import { useShownIn } from './edit-piece';
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

/** The table with the first picture of the garment under it. */
export function DraftCanvas() {
  const diagram = useGarment((state) => state.garment?.diagrams[0]);
  const set = useGarment((state) => state.garment && currentSet(state.garment));
  return diagram && set ? (
    <CanvasOver diagram={diagram} set={set} />
  ) : (
    <Canvas picture={undefined} printed={undefined} />
  );
}

function CanvasOver({ diagram, set }: { readonly diagram: Diagram; readonly set: MeasureSet }) {
  const pictures = useDiagramPictures(diagram, set);
  const { laidFlat, map } = pictures;
  const printed = useMemo(() => (map.kind === 'map' ? printedBox(diagram, map) : undefined), [diagram, map]);
  const picture = useCleaned(diagram.id, laidFlat);
  return (
    <>
      <FollowUnder pictures={pictures.pictures} map={map} />
      <Canvas picture={picture} printed={printed} />
    </>
  );
}

/** Where the rectangle she squared the picture up by lies on the table: what is printed, without the desk round it. */
function printedBox({ placedAt: { x, y } }: Diagram, { plane, across, down }: DiagramMap): Box {
  return { minX: x, minY: y, maxX: x + plane.across * across, maxY: y + plane.down * down };
}

interface CanvasProps {
  readonly picture: LaidPicture | undefined;
  readonly printed: Box | undefined;
}

function Canvas({ picture, printed }: CanvasProps) {
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
            {picture && photoShown && <PictureShape {...picture} strength={photoStrength * light} />}
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

import { useCallback, useMemo } from 'react';
import { Layer } from 'react-konva/lib/ReactKonvaCore';
import { type DiagramMap, photoToTable, tableToPhoto } from '../../core/diagram/diagram-map';
import { dividedRun } from '../../core/diagram/divided-run';
import { boxAround } from '../../core/diagram/squared-picture';
import type { Diagram } from '../../core/garment/diagram';
import type { Garment } from '../../core/garment/garment';
import { currentSet } from '../../core/garment/measure-value';
import type { Box } from '../../core/geometry/bounds';
import type { PhotoPoint } from '../../core/geometry/point';
import { PictureShape } from '../photo/picture-shape';
import { useCleaned } from '../photo/use-cleaned';
import { type DiagramPictures, useDiagramPictures } from '../photo/use-pictures';
import { useGarment } from '../state/garment-store';
import { useTable, type View } from '../state/table-store';
import { type Paint, Painted } from '../table/painted';
import { Viewport } from '../table/viewport';
import { diagramWords as words } from '../words/diagram';
import { useDesk } from './desk-store';
import { type Face, photoFace } from './face';
import { matchTool } from './matching';
import { type Match, paintMarks } from './paint-marks';
import { photoTool } from './photo-tool';

interface DiagramCanvasProps {
  readonly diagram: Diagram;
  readonly pictures: DiagramPictures;
}

/** Another picture of the garment, in which the matching place is asked for. */
export function OtherCanvas({ diagram, garment }: { readonly diagram: Diagram; readonly garment: Garment }) {
  const pictures = useDiagramPictures(diagram, currentSet(garment), garment.diagrams);
  return <TakenCanvas key={`taken ${diagram.id}`} diagram={diagram} pictures={pictures} />;
}

/** The picture of a diagram, as taken or laid flat, with its corners and known lengths to take hold of. */
export function DiagramCanvas({ diagram, pictures }: DiagramCanvasProps) {
  const { showing, matching } = useDesk();
  const { map } = pictures;
  return showing === 'squared' && map.kind === 'map' && !matching ? (
    <FlatCanvas key={`flat ${diagram.id}`} diagram={diagram} pictures={pictures} map={map} />
  ) : (
    <TakenCanvas key={`taken ${diagram.id}`} diagram={diagram} pictures={pictures} />
  );
}

function TakenCanvas({ diagram, pictures }: DiagramCanvasProps) {
  const { widthPx, heightPx } = diagram;
  const fit = useMemo(() => ({ minX: 0, minY: 0, maxX: widthPx, maxY: heightPx }), [widthPx, heightPx]);
  return <FaceCanvas diagram={diagram} pictures={pictures} face={photoFace} fit={fit} which="photo" />;
}

function FlatCanvas({ diagram, pictures, map }: DiagramCanvasProps & { readonly map: DiagramMap }) {
  const face = useMemo(
    (): Face => ({
      kind: 'squared',
      toWorld: (photo) => photoToTable(map, photo),
      toPhoto: (world) => tableToPhoto(map, world),
    }),
    [map],
  );
  const { minX, minY, maxX, maxY } = boxAround(map, 0);
  const fit = useMemo(() => ({ minX, minY, maxX, maxY }), [minX, minY, maxX, maxY]);
  return <FaceCanvas diagram={diagram} pictures={pictures} face={face} fit={fit} which="table" />;
}

interface FaceCanvasProps extends DiagramCanvasProps {
  readonly face: Face;
  readonly fit: Box;
  readonly which: 'photo' | 'table';
}

/** How far in and out: from a thumbnail to a single pixel of the photo as large as a fingertip. */
const limits = { photo: { min: 0.02, max: 16 }, table: { min: 0.05, max: 60 } } as const;

function FaceCanvas({ diagram, pictures, face, fit, which }: FaceCanvasProps) {
  const view = useTable((table) => table.view[which]);
  const setView = useTable((table) => table.setView);
  const onView = useCallback((next: View) => setView(which, next), [setView, which]);
  const { corner, sidePlace, held, drawing, fresh: drawn, ruling, matching } = useDesk();
  const fresh = drawn ?? ruling;
  const chosen = useTable((table) => table.chosen);
  const lengthId = chosen.kind === 'known-length' ? chosen.knownLengthId : undefined;
  const isDrawing = drawing !== undefined;
  const isMatching = matching !== undefined;
  const given = matching?.diagramId === diagram.id ? matching.here : undefined;
  const { map } = pictures;
  const wrong = map.kind === 'not-squared';
  const firstEnd = drawing?.from && face.toWorld(drawing.from);
  const tool = useMemo(
    () => (isMatching ? matchTool() : photoTool(diagram, face, { drawing: isDrawing })),
    [diagram, face, isDrawing, isMatching],
  );
  const diagrams = useGarment((state) => state.garment?.diagrams);
  const matches = useMemo(() => matchesIn(diagram, diagrams ?? [], given), [diagram, diagrams, given]);
  const paint = useCallback<Paint>(
    (pen, { px }) => {
      const divided = (line: Parameters<typeof dividedRun>[1], parts: number) => dividedRun(map, line, parts);
      const marks = { diagram, face, corner, sidePlace, held, lengthId, fresh, firstEnd, wrong, divided, matches };
      paintMarks(pen, px, marks);
    },
    [diagram, face, corner, sidePlace, held, lengthId, fresh, firstEnd, wrong, map, matches],
  );
  const picture = useCleaned(diagram.id, face.kind === 'photo' ? pictures.asTaken : pictures.laidFlat);
  return (
    <Viewport
      view={view}
      onView={onView}
      fit={fit}
      tool={tool}
      label={words.canvas}
      minScale={limits[which].min}
      maxScale={limits[which].max}
      loupe="always"
    >
      {() => (
        <>
          <Layer listening={false}>{picture && <PictureShape {...picture} />}</Layer>
          <Layer listening={false}>
            <Painted paint={paint} />
          </Layer>
        </>
      )}
    </Viewport>
  );
}

/** The places of a picture that match with another, each with its letter: its own, and those of halves laid onto it. */
function matchesIn(diagram: Diagram, diagrams: readonly Diagram[], given: PhotoPoint | undefined): Match[] {
  const own = diagram.joined?.pairs.map(({ here }, index) => ({ at: here, index })) ?? [];
  const theirs = diagrams.flatMap(({ joined }) =>
    joined?.diagramId === diagram.id ? joined.pairs.map(({ there }, index) => ({ at: there, index })) : [],
  );
  const next = given ? [{ at: given, index: own.length }] : [];
  return [...own, ...theirs, ...next].map(({ at, index }) => ({ at, letter: words.together.letter(index) }));
}

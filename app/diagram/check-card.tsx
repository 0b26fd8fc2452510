import { useMemo } from 'react';
import type { DiagramFinding } from '../../core/diagram/diagram-findings';
import type { DiagramMap } from '../../core/diagram/diagram-map';
import { pageCheck } from '../../core/diagram/page-check';
import type { NotSquared } from '../../core/diagram/squared-plane';
import type { Diagram } from '../../core/garment/diagram';
import { MM_PER_INCH, type ShownIn } from '../../core/units/inch';
import type { ReadyPicture } from '../photo/picture-store';
import { useTable } from '../state/table-store';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Note } from '../ui/note';
import { diagramWords } from '../words/diagram';
import { writeLength } from '../words/written';
import styles from './diagram-room.module.css';
import { Findings } from './findings-list';
import { RuledLines } from './ruled-lines';

const words = diagramWords.check;

interface CheckCardProps {
  readonly diagram: Diagram;
  readonly map: DiagramMap | NotSquared;
  readonly findings: readonly DiagramFinding[];
  readonly photo: ReadyPicture | undefined;
  readonly shownIn: ShownIn;
}

/** The third step: the scale in words and numbers, and whether it is good enough to trace. */
export function CheckCard({ diagram, map, findings, photo, shownIn }: CheckCardProps) {
  // What one known length lacks stands with that length.
  const here = findings.filter(({ place }) => place.kind === 'diagram' && place.knownLengthId === undefined);
  const isStopped = findings.some(({ weight }) => weight === 'stop');
  return (
    <Card title={words.title} about="scale-check">
      {map.kind === 'map' && map.scale && (
        <ScaleWords map={map} shownIn={shownIn} isStretched={findings.some(({ kind }) => kind === 'stretched')} />
      )}
      {map.kind === 'map' && map.scale && <TruthWords {...{ diagram, map, shownIn }} />}
      <Findings findings={here} />
      <RuledLines {...{ diagram, map, photo, shownIn }} />
      {isStopped ? (
        <p>{words.notGood}</p>
      ) : (
        <>
          <Note tone="good">{findings.length === 0 ? words.good : words.withCare}</Note>
          <Button tone="chalk" onPress={() => useTable.getState().goTo('draft')}>
            {words.toDraft}
          </Button>
        </>
      )}
    </Card>
  );
}

type TruthWordsProps = Pick<CheckCardProps, 'diagram' | 'shownIn'> & { readonly map: DiagramMap };

/** How straight and square lie what else is seen in the picture; said as a finding where that is poor. */
function TruthWords({ diagram, map, shownIn }: TruthWordsProps) {
  const truth = useMemo(() => pageCheck(diagram, map), [diagram, map]);
  if (!truth) return diagram.squareUp.kind === 'rectangle' ? <p className={styles.hint}>{words.truthUnknown}</p> : null;
  const { off, over } = truth.worst;
  return <p>{words.truth(writeLength(off, { shownIn, step: 'thirtysecond' }), writeLength(over, { shownIn }))}</p>;
}

/** A difference between across and down below this is not worth a number. */
const ALIKE = 0.0005;

interface ScaleWordsProps {
  readonly map: DiagramMap;
  readonly shownIn: ShownIn;
  /** A finding says by how much. */
  readonly isStretched: boolean;
}

function ScaleWords({ map, shownIn, isStretched }: ScaleWordsProps) {
  const { across, down, plane, scale } = map;
  const onePixel = (mm: number) => (shownIn === 'in' ? words.pixelIn(MM_PER_INCH / mm) : words.pixelMm(mm));
  const write = (mm: number) => writeLength(mm, { shownIn });
  const ratio = across / down;
  const share = Math.max(ratio, 1 / ratio) - 1;
  return (
    <>
      <p>{words.onePixel(onePixel(across), onePixel(down))}</p>
      <p>{words.slip(writeLength(2 * Math.max(across, down), { shownIn, step: 'thirtysecond' }))}</p>
      <p>
        {plane.aspectFrom === 'flat'
          ? words.size(write(plane.across * across), write(plane.down * down))
          : words.rectangle(write(plane.across * across), write(plane.down * down))}
      </p>
      {scale?.split && !isStretched && (
        <p>{share < ALIKE ? words.alike : (ratio < 1 ? words.across : words.down)(words.percent(share))}</p>
      )}
    </>
  );
}

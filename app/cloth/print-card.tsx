import { useState } from 'react';
import { placedJoin } from '../../core/cloth/placed-join';
import { ringCentre } from '../../core/cloth/ring-middle';
import type { Garment } from '../../core/garment/garment';
import type { GarmentCloth } from '../../core/garment/garment-cloth';
import { boxOfPoints } from '../../core/geometry/bounds';
import type { LaidCloth } from '../../core/paper/lay-pdf';
import { inches } from '../../core/units/inch';
import { today } from '../state/today';
import { download, fileName } from '../storage/download';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Note } from '../ui/note';
import { say } from '../ui/say';
import { clothWords as words } from '../words/cloth';
import { writeLength } from '../words/written';
import { fontAddresses, pdfWork } from '../workers/pdf-calls';
import styles from './cloth.module.css';
import { laidName } from './names';
import { placeSaid, saidOf } from './place-said';
import type { ShownLay } from './shown-lay';

interface PrintCardProps {
  readonly garment: Garment;
  readonly cloth: GarmentCloth;
  readonly lay: ShownLay;
}

/** The lay on paper: a plan on one page, and a sheet to scale. */
export function PrintCard({ garment, cloth, lay }: PrintCardProps) {
  const [state, setState] = useState<'ready' | 'making' | 'failed'>('ready');
  const { shownIn } = garment;
  const scale = shownIn === 'in' ? 8 : 10;
  const { standing, task } = lay;
  const canPrint = standing !== undefined && !standing.changed && task !== undefined;
  const make = async (what: 'plan' | 'scale') => {
    if (!canPrint) return;
    setState('making');
    const answer = await pdfWork.call('clothLay', {
      laid: laidCloth(garment, cloth, lay),
      said: paperSaid(garment, cloth, lay, what === 'scale' ? scale : undefined),
      garment: { paper: garment.paper, shownIn },
      today: today(),
      fonts: fontAddresses(),
      ...(what === 'scale' ? { scale } : {}),
    });
    if (answer.kind !== 'made') return setState('failed');
    setState('ready');
    const file = what === 'plan' ? words.filePlan : words.fileScale;
    const name = `${fileName(`${garment.name} ${words.clothName(cloth)} ${file}`)}-${garment.paper.size}.pdf`;
    download(new Uint8Array(answer.bytes), name, 'application/pdf');
    say(words.printed(answer.pages));
  };
  return (
    <Card title={words.print} about="lay-plan">
      <p className={styles.small}>{canPrint ? words.printHelp : words.printFirst}</p>
      <div className={styles.row}>
        <Button icon="page" disabled={!canPrint || state === 'making'} onPress={() => void make('plan')}>
          {words.printPlan}
        </Button>
        <Button icon="ruler" disabled={!canPrint || state === 'making'} onPress={() => void make('scale')}>
          {words.printScale(words.scaleOf(scale))}
        </Button>
      </div>
      {state === 'making' && <p className={styles.small}>{words.printMaking}</p>}
      {state === 'failed' && <Note tone="stop">{words.printFailed}</Note>}
    </Card>
  );
}

function laidCloth(garment: Garment, cloth: GarmentCloth, { shown, task, standing }: ShownLay): LaidCloth {
  const isFolded = (how: GarmentCloth['folded']) => cloth.folded === how && !cloth.shape;
  const { canvas } = words;
  return {
    across: task?.ground.across ?? 1,
    length: standing?.lay.length ?? 1,
    kept: task?.ground.kept ?? [],
    pieces: shown.map(({ ring, place, piece }) => ({
      ring,
      join: placedJoin(piece, place, cloth.pieced ?? []),
      middle: ringCentre(ring),
      turn: piece.stances[place.stance]?.turn ?? 0,
      name: laidName(place.id, garment, cloth),
    })),
    fold: isFolded('lengthwise') ? 'side' : isFolded('crosswise') ? 'end' : 'none',
    sides: cloth.shape
      ? { near: '', far: '', end: '' }
      : {
          near: isFolded('lengthwise') ? canvas.fold : canvas.selvedge,
          far: canvas.selvedge,
          end: isFolded('crosswise') ? canvas.fold : canvas.cutEnd,
        },
  };
}

/** How far the rule of the lay is numbered at most: no cloth is longer than a hundred metres. */
const MOST_STEPS = 4000;

function paperSaid(
  garment: Garment,
  cloth: GarmentCloth,
  { shown, standing, faults }: ShownLay,
  scale: number | undefined,
) {
  const { shownIn } = garment;
  const length = (mm: number) => writeLength(mm, { shownIn, step: 'eighth' });
  const needed = standing?.needed ?? 0;
  // Numbers stand as near as they can be read: on a plan of a long lay further apart.
  const box = boxOfPoints(shown.flatMap(({ ring }) => ring));
  const isLong = (box?.maxX ?? 0) > 2500;
  const each = shownIn === 'in' ? (scale !== undefined || !isLong ? 4 : 12) : scale !== undefined || !isLong ? 10 : 50;
  const step = shownIn === 'in' ? inches(each) : 10 * each;
  const count = Math.min(MOST_STEPS, Math.ceil((box?.maxX ?? 0) / step) + 1);
  return {
    title: words.paperTitle(
      garment.name,
      words.clothName(cloth),
      scale === undefined ? undefined : words.scaleOf(scale),
    ),
    lines: [
      words.paperTakes(length(needed), words.bought(needed, shownIn), length(cloth.width), words.grains[cloth.grain]),
      [
        cloth.shape ? '' : `${words.folded} ${words.foldedWays[cloth.folded]}.`,
        standing ? `${words.used(standing.sums.used)}.` : '',
        cloth.nap === 'one-way' ? words.napHelp : '',
        faults.length > 0 ? `${words.faults(faults.length)}.` : '',
        standing?.lay.version === undefined ? '' : words.version(standing.lay.version),
      ]
        .filter((part) => part !== '')
        .join(' '),
    ],
    places: shown.map((one) => `${saidOf(one, garment, cloth)}: ${placeSaid(one, garment, cloth)}`),
    footer: words.paperFoot(garment.name, words.clothName(cloth)),
    rule: {
      step,
      written: Array.from({ length: count + 1 }, (_, i) => (i === 0 ? '0' : words.ruleAt(i * each, shownIn, i === 1))),
    },
    scaleCheck: scale === undefined ? '' : words.scaleCheck(length(inches(4) * scale)),
  };
}

import { useMemo, useState } from 'react';
import { cutPieces } from '../../core/garment/cut-pieces';
import type { Garment } from '../../core/garment/garment';
import { garmentOfVersion } from '../../core/garment/version';
import { versionSaid } from '../../core/garment/version-said';
import type { TapedSheet } from '../../core/paper/placed-piece';
import { type ChosenPages, isChosen } from '../../core/paper/printing-of';
import { useGarment } from '../state/garment-store';
import { useVersionsOf } from '../storage/use-versions';
import { NoPieces } from '../table/no-pieces';
import { RoomLayout } from '../ui/room-layout';
import { paperWords as words } from '../words/paper';
import { FilesCard } from './files-card';
import { LabelCard } from './label-card';
import { MakeCard } from './make-card';
import { MoreCard } from './more-card';
import { PagesPreview } from './pages-preview';
import { PaperCard } from './paper-card';
import { PrintedCard } from './printed-card';
import { ProofCard } from './proof-card';
import { ScreenCard } from './screen-card';
import { SquaresCard } from './squares-card';
import { useMaking } from './use-making';
import { useTapedSheets } from './use-taped-sheets';

/** From the draft to paper: true-size pages, or the squares sheet. */
export function PaperRoom() {
  const garment = useGarment((state) => state.garment);
  if (!garment) return null;
  if (cutPieces(garment).length > 0) return <WithPieces garment={garment} />;
  return <NoPieces words={words} notebook={<PaperCard garment={garment} />} />;
}

function WithPieces({ garment }: { readonly garment: Garment }) {
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const [pages, setPages] = useState<ChosenPages>([]);
  const [older, setOlder] = useState<readonly number[]>([]);
  const chosen = cutPieces(garment).filter((piece) => !left.has(piece.id));
  const { versions } = useVersionsOf(garment.id);
  const version = versionSaid(versions, garment);
  const under = useMemo(
    () =>
      older.flatMap((number) => {
        const kept = versions.find((one) => one.number === number);
        const pieces = kept && garmentOfVersion(versions, number)?.pieces;
        return kept && pieces ? [{ said: words.versionNamed(kept), pieces }] : [];
      }),
    [versions, older],
  );
  const laid = useTapedSheets(
    chosen,
    garment.paper,
    under.map(({ pieces }) => pieces),
  );
  const making = useMaking(garment, chosen);
  const toggle = (pieceId: string, on: boolean) => {
    const next = new Set(left);
    if (on) next.delete(pieceId);
    else next.add(pieceId);
    setLeft(next);
    setPages([]);
  };
  const onPage = (sheet: TapedSheet, name: string) => {
    const pieceId = sheet.placed[0]?.piece.id ?? '';
    const others = pages.filter((page) => !isChosen(sheet, { label: name }, [page]));
    setPages(others.length < pages.length ? others : [...pages, { pieceId, name }]);
  };
  // A page that is no more when pieces or paper have changed is not asked for.
  const sheets = laid.found?.sheets ?? [];
  const wanted = pages.filter((page) =>
    sheets.some((sheet) => sheet.plan.pages.some((one) => isChosen(sheet, one, [page]))),
  );
  return (
    <RoomLayout
      table={
        <PagesPreview
          sheets={sheets}
          shownIn={garment.shownIn}
          noneChosen={chosen.length === 0}
          pages={wanted}
          onPage={onPage}
        />
      }
      notebook={
        <>
          <MakeCard
            garment={garment}
            chosen={chosen}
            version={version}
            making={making}
            laid={laid}
            pages={wanted}
            under={under}
            onAllPages={() => setPages([])}
            onToggle={toggle}
          />
          <PrintedCard garment={garment} making={making} />
          <PaperCard garment={garment} />
          <MoreCard garment={garment} versions={versions} older={older} onOlder={setOlder} />
          <ProofCard garment={garment} />
          <SquaresCard garment={garment} chosen={chosen} />
          <ScreenCard garment={garment} chosen={chosen} />
          <LabelCard garment={garment} />
          <FilesCard garment={garment} />
        </>
      }
    />
  );
}

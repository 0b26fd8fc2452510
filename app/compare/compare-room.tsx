import { useEffect, useMemo, useRef } from 'react';
import type { Garment } from '../../core/garment/garment';
import type { Piece } from '../../core/garment/piece';
import { addPiece, withFreshIds } from '../../core/garment/piece-list';
import { pieceOf } from '../../core/garment/with-piece';
import { firstOf } from '../base/first-block';
import { useGarment } from '../state/garment-store';
import { newId } from '../state/new-id';
import { useTable } from '../state/table-store';
import { NoPieces } from '../table/no-pieces';
import { RoomLayout } from '../ui/room-layout';
import tableStyles from '../ui/room-table.module.css';
import { say } from '../ui/say';
import { compareWords as words } from '../words/compare';
import { shellWords } from '../words/shell';
import { type Comparison, type Source, useCompare } from './compare-store';
import { CompareTable } from './compare-table';
import { comparedAs } from './figures';
import { FiguresCard } from './figures-card';
import { HowCard } from './how-card';
import { KeyStrip } from './key-strip';
import { nudged, useLaying } from './laying';
import { nameOf, shortNames } from './names';
import { type Kept, useKept, useOther } from './other-garment';
import { LEAST_SHOWN } from './paint-compare';
import { inWords } from './sentences';
import { WhatCard } from './what-card';
import { finely } from './write';

/** The room where one piece is laid over another, and what differs is measured. Neither is changed by it. */
export function CompareRoom() {
  const garment = useGarment((state) => state.garment);
  if (!garment) return null;
  if (garment.pieces.length === 0) return <NoPieces words={words} notebook={null} />;
  return <Comparing garment={garment} />;
}

function Comparing({ garment }: { readonly garment: Garment }) {
  const { shownIn } = garment;
  const state = useCompare();
  const { nudge, beneath, dragging, keyed } = state;
  const chosen = useTable((table) => table.chosen);
  const mine = myPiece(garment, state.pieceId ?? ('pieceId' in chosen ? chosen.pieceId : undefined));
  const kept = useKept(garment.id);
  const source = useMemo(() => state.source ?? likeliest(garment, kept), [state.source, garment, kept]);
  const comparison = { ...state, source };
  const other = useOther(garment, source, kept);
  const otherGarment = other.kind === 'garment' ? other.garment : undefined;
  const others = otherGarment?.pieces.filter(({ id }) => source.kind !== 'piece' || id !== mine.id) ?? [];
  const otherPiece =
    others.find(({ id }) => id === state.otherId) ??
    others.find(({ id }) => id === mine.id) ??
    others.find(({ name }) => name !== '' && name === mine.name) ??
    others[0];
  const laying = useLaying(comparison, mine, otherPiece);
  const laid = laying.kind === 'laid' ? laying.piece : undefined;
  const now = useMemo(() => laid && nudged(laid, nudge), [laid, nudge]);
  const pair = useMemo(
    () => now && (beneath === 'mine' ? { under: mine, over: now } : { under: now, over: mine }),
    [mine, now, beneath],
  );
  // While she drags, the figures wait: they would hold the drag up.
  const compared = useMemo(
    () => (pair && otherGarment && !dragging ? comparedAs(pair, garment, otherGarment, beneath) : undefined),
    [pair, dragging, garment, otherGarment, beneath],
  );
  const short = otherGarment && otherPiece && shortNames(mine, otherPiece, source, otherGarment);
  const names =
    short && (beneath === 'mine' ? { under: short.mine, over: short.other } : { under: short.other, over: short.mine });
  const gap = compared && compared.gap.width >= LEAST_SHOWN ? finely(compared.gap.width, shownIn) : undefined;
  const saidOf = useRef(keyed);
  // biome-ignore lint/correctness/useExhaustiveDependencies: said after each nudge by key, and for nothing else
  useEffect(() => {
    if (keyed === saidOf.current) return;
    saidOf.current = keyed;
    say(words.said(gap ?? words.nowhere));
  }, [keyed]);
  const swap = () => {
    useCompare.setState({ beneath: beneath === 'mine' ? 'other' : 'mine' });
    if (names) say(words.swapped(names.over));
  };
  const layGuide = (piece: Piece, from: string) => {
    useGarment.getState().edit(words.guideLabel, (before) => addPiece(before, asGuide(piece, from)));
    say(words.guideDone);
  };
  return (
    <RoomLayout
      tableFirst
      table={
        <div className={tableStyles.table}>
          <h1 className="only-heard">{shellWords.rooms.compare}</h1>
          {names && <KeyStrip names={names} gap={gap} onSwap={swap} />}
          <div className={tableStyles.canvas}>
            <CompareTable
              shownIn={shownIn}
              anew={layingKey(comparison, mine, otherPiece)}
              mine={mine}
              laid={laid}
              now={now}
              pair={pair}
              differences={compared}
            />
          </div>
        </div>
      }
      notebook={
        <>
          <WhatCard {...{ garment, mine, source, kept, other, others, otherPiece }} />
          {otherPiece && short && (
            <HowCard {...{ shownIn, comparison, mine, laying }} other={otherPiece} names={short} />
          )}
          {now && pair && compared && names && short && (
            <FiguresCard
              {...{ pair, compared, names, shownIn }}
              sentences={inWords(pair, compared, names, shownIn)}
              onGuide={() => layGuide(now, short.other)}
            />
          )}
        </>
      }
    />
  );
}

/** The newest version, or the pieces as traced, or another piece; else a draft for the wearer. */
function likeliest(garment: Garment, kept: Kept | undefined): Source {
  const newest = kept?.versions.at(-1);
  if (newest) return { kind: 'version', number: newest.number };
  if (garment.traced && garment.traced.length > 0) return { kind: 'traced' };
  if (garment.pieces.length > 1 || !kept) return { kind: 'piece' };
  return { kind: 'draft', block: firstOf('plain-skirt', garment) };
}

function myPiece(garment: Garment, pieceId: string | undefined): Piece {
  return (pieceId !== undefined && pieceOf(garment, pieceId)) || (garment.pieces[0] as Piece);
}

/** A word for each pair and each way of laying it, whatever it is nudged. */
function layingKey(comparison: Comparison, mine: Piece, other: Piece | undefined): string {
  const { how, corner, otherCorner, edge, otherEdge, way, mirrored, turned } = comparison;
  return [mine.id, other?.id, how, corner, otherCorner, edge, otherEdge, way, mirrored, turned].join(' ');
}

/** A piece as it lies here, to be laid under a draft. The picture it was traced from may be another garment's. */
function asGuide(piece: Piece, from: string): Piece {
  const { diagramId: _diagramId, ...rest } = piece;
  const name = words.guideName(nameOf(piece), from);
  return { ...withFreshIds(rest, { newId, name }), use: 'guide' };
}

import type { ReactNode } from 'react';
import { useTable } from '../state/table-store';
import { Button } from '../ui/button';
import { EmptySheet } from '../ui/empty-sheet';
import { RoomLayout } from '../ui/room-layout';

interface NoPiecesProps {
  readonly words: { readonly noPiecesTitle: string; readonly noPieces: string; readonly toDraft: string };
  readonly notebook: ReactNode;
}

/** A room that is of use only once there is a piece: what it will be for, and the way to where one is drawn. */
export function NoPieces({ words, notebook }: NoPiecesProps) {
  const goTo = useTable((table) => table.goTo);
  return (
    <RoomLayout
      tableFirst
      table={
        <EmptySheet title={words.noPiecesTitle}>
          <p>{words.noPieces}</p>
          <Button tone="chalk" onPress={() => goTo('draft')}>
            {words.toDraft}
          </Button>
        </EmptySheet>
      }
      notebook={notebook}
    />
  );
}

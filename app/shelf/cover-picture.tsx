import { useEffect, useState } from 'react';
import type { ShelfRow } from '../storage/database';
import { Icon } from '../ui/icon';
import { coverOf } from './cover';
import styles from './shelf-room.module.css';

/** The small picture of a garment. It says nothing that its name does not say, so it is not heard. */
export function CoverPicture({ row }: { readonly row: ShelfRow }) {
  const address = useCover(row);
  return address ? (
    <img className={styles.cover} src={address} alt="" width={72} height={72} />
  ) : (
    <span className={styles.noCover}>
      <Icon name="piece" />
    </span>
  );
}

function useCover(row: ShelfRow): string | undefined {
  const [address, setAddress] = useState<string>();
  // biome-ignore lint/correctness/useExhaustiveDependencies: nothing else of a row bears on its cover.
  useEffect(() => {
    let left = false;
    let made: string | undefined;
    coverOf(row).then(
      (cover) => {
        if (left) return;
        made = cover && URL.createObjectURL(new Blob([cover.bytes], { type: cover.type }));
        setAddress(made);
      },
      () => undefined,
    );
    return () => {
      left = true;
      if (made) URL.revokeObjectURL(made);
    };
  }, [row.id, row.changed]);
  return address;
}

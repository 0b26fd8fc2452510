import { useEffect, useState } from 'react';
import { useKept } from '../state/kept-store';
import { isThereToStay, lookAtRoom } from '../storage/device-room';
import { storageWords as words } from '../words/storage';
import styles from './shelf-room.module.css';

/** How much this browser keeps of hers, how much more it allows, and whether it may clear it. */
export function KeptHere() {
  const room = useKept((kept) => kept.room);
  const [stays, setStays] = useState<boolean>();
  useEffect(() => {
    void lookAtRoom('now');
    void isThereToStay().then(setStays);
  }, []);
  if (stays === undefined) return null;
  return (
    <p className={styles.private}>
      {room ? words.used(words.bytes(room.used), words.bytes(room.left)) : words.usedUnknown}{' '}
      {stays ? words.stays : words.mayGo}
      {!('serviceWorker' in navigator) && ` ${words.needsNetwork}`}
    </p>
  );
}

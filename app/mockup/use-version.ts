import { useEffect, useState } from 'react';
import type { Garment } from '../../core/garment/garment';
import { garmentOfVersion } from '../../core/garment/version';
import { versionsOf } from '../storage/versions';

/** The garment of a version: still being opened, here, or not on this device. */
export type OpenedVersion =
  | { readonly kind: 'opening' }
  | { readonly kind: 'here'; readonly garment: Garment }
  | { readonly kind: 'gone' };

const opening: OpenedVersion = { kind: 'opening' };

/** Opens a version of a garment; without a number there is none to open. */
export function useVersion(garmentId: string, number: number | undefined): OpenedVersion {
  const key = `${garmentId} ${number}`;
  const [opened, setOpened] = useState<{ readonly key: string; readonly version: OpenedVersion }>();
  useEffect(() => {
    if (number === undefined) return;
    let stale = false;
    versionsOf(garmentId)
      .catch(() => [])
      .then((versions) => {
        if (stale) return;
        const garment = garmentOfVersion(versions, number);
        setOpened({ key, version: garment ? { kind: 'here', garment } : { kind: 'gone' } });
      });
    return () => {
      stale = true;
    };
  }, [garmentId, number, key]);
  return opened?.key === key ? opened.version : opening;
}

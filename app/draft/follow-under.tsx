import { useEffect } from 'react';
import { usePictureInk } from '../photo/picture-ink';
import type { DiagramPictures } from '../photo/use-pictures';
import { useDraft } from './draft-store';
import { beginFollowing, endFollowing, growFrom, setUnderTable } from './follow-ink';

/** While a printed line is followed: reads the ink of the picture under the table, and grows the ways from the last point. */
export function FollowUnder({ pictures: { photo }, map }: Pick<DiagramPictures, 'pictures' | 'map'>) {
  return photo && map.kind === 'map' ? <Follow photo={photo} map={map} /> : null;
}

type FollowProps = Exclude<Parameters<typeof setUnderTable>[0], undefined>;

function Follow({ photo, map }: FollowProps) {
  const following = useDraft((draft) => draft.following && draft.mode === 'trace');
  const trace = useDraft((draft) => draft.trace);
  const isRead = usePictureInk(({ ink }) => ink.kind === 'read' && ink.key === photo.key);

  useEffect(() => {
    setUnderTable({ photo, map });
    return () => setUnderTable(undefined);
  }, [photo, map]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: another picture is read anew
  useEffect(() => {
    if (!following) return;
    beginFollowing();
    return endFollowing;
  }, [following, photo]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: where the picture lies moves the place the ways grow from
  useEffect(() => {
    if (following && isRead && trace.length > 0) void growFrom(trace);
  }, [following, isRead, trace, map]);

  return null;
}

import { type ReactNode, useEffect, useRef } from 'react';

/** A card that comes into sight when it appears: what was pressed may lie far below it. */
export function SeenFirst({ children }: { readonly children: ReactNode }) {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    place.current?.scrollIntoView({ block: 'start' });
  }, []);
  return <div ref={place}>{children}</div>;
}

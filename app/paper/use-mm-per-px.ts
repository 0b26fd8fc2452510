import { useLayoutEffect, useRef, useState } from 'react';

/** How many mm of a drawing lie under one CSS pixel, followed as the room changes; the drawing measures in mm. */
export function useMmPerPx() {
  const svg = useRef<SVGSVGElement>(null);
  const [mmPerPx, setMmPerPx] = useState(1);
  useLayoutEffect(() => {
    const drawing = svg.current;
    if (!drawing) return;
    const look = () => {
      const { width } = drawing.getBoundingClientRect();
      if (width > 0) setMmPerPx(drawing.viewBox.baseVal.width / width);
    };
    const watch = new ResizeObserver(look);
    watch.observe(drawing);
    look();
    return () => watch.disconnect();
  });
  return { svg, mmPerPx };
}

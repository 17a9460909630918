import { type RefObject, useEffect, useState } from "react";

/** The width of a picture in pixels, so that it is drawn as wide as it is shown and its words keep their size; `first` until it is known. */
export function usePictureWidth(picture: RefObject<SVGSVGElement>, first: number): number {
  const [width, setWidth] = useState(first);
  useEffect(() => {
    const { current } = picture;
    if (current === null || typeof ResizeObserver === "undefined") return;
    const observer = new ResizeObserver(([entry]) => {
      const shown = Math.floor(entry?.contentRect.width ?? 0);
      // Never narrower than its words need; then the whole is made smaller.
      if (shown > 0) setWidth(Math.max(first, shown));
    });
    observer.observe(current);
    return () => observer.disconnect();
  }, [picture, first]);
  return width;
}

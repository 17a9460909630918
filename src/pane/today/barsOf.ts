/** One bar of the picture, measured from its left edge and its foot. */
interface Bar {
  readonly day: number;
  readonly leftPx: number;
  readonly widthPx: number;
  readonly heightPx: number;
  /** The height of the day's limit; null where it has none. */
  readonly limitPx: number | null;
}

/** Bars side by side over the whole width, the highest of them or the highest limit reaching the top. */
export function barsOf(
  days: readonly { readonly day: number; readonly valueOut: number; readonly limit: number | null }[],
  { widthPx, heightPx }: { readonly widthPx: number; readonly heightPx: number },
): readonly Bar[] {
  const most = Math.max(0, ...days.flatMap(({ valueOut, limit }) => [valueOut, limit ?? 0]));
  const step = widthPx / Math.max(1, days.length);
  const gapPx = Math.min(2, step / 4);
  const tall = (amount: number): number => (most === 0 ? 0 : (amount / most) * heightPx);
  return days.map(({ day, valueOut, limit }, index) => ({
    day,
    leftPx: index * step,
    widthPx: step - gapPx,
    heightPx: tall(valueOut),
    limitPx: limit === null ? null : tall(limit),
  }));
}

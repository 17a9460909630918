/** One bar of the picture, measured from its left edge and its foot. */
export interface Bar {
  readonly day: number;
  readonly leftPx: number;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** Bars side by side over the whole width, the highest of them or the limit reaching the top. */
export function barsOf(
  days: readonly { readonly day: number; readonly valueOut: number }[],
  limit: number | undefined,
  { widthPx, heightPx }: { readonly widthPx: number; readonly heightPx: number },
): { readonly bars: readonly Bar[]; readonly limitPx: number | null } {
  const most = Math.max(limit ?? 0, ...days.map(({ valueOut }) => valueOut));
  const step = widthPx / Math.max(1, days.length);
  const gapPx = Math.min(2, step / 4);
  const tall = (amount: number): number => (most === 0 ? 0 : (amount / most) * heightPx);
  return {
    bars: days.map(({ day, valueOut }, index) => ({
      day,
      leftPx: index * step,
      widthPx: step - gapPx,
      heightPx: tall(valueOut),
    })),
    limitPx: limit === undefined ? null : tall(limit),
  };
}

/** A parcel as carriers charge for it; any units that belong together. */
interface Parcel {
  readonly length: number;
  readonly width: number;
  readonly height: number;
  readonly weight: number;
  /** Volume for each unit of weight. */
  readonly divisor: number;
  /** The step up to which the weight is rounded; null where it is not. */
  readonly roundUp: number | null;
}

/** The larger of what a parcel weighs and its volume over the divisor, rounded up to whole steps. */
export function parcelWeight({ length, width, height, weight, divisor, roundUp }: Parcel): number {
  const larger = Math.max(weight, (length * width * height) / divisor);
  if (roundUp === null) return larger;
  // 0.3 is three steps of 0.1, though the quotient is a little over 3.
  const steps = Math.ceil(Number((larger / roundUp).toPrecision(12)));
  return Number((steps * roundUp).toPrecision(12));
}

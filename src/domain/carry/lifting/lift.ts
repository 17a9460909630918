/** One way of lifting, in the terms of the revised lifting equation: lengths in centimetres with "kg", in inches with "lb". */
export interface Lift {
  readonly unit: "kg" | "lb";
  /** From the middle of the ankles to the middle of the hands. */
  readonly horizontal: number;
  /** From the floor to the hands. */
  readonly vertical: number;
  /** How far up or down the hands go. */
  readonly travel: number;
  /** Degrees that the lift is away from straight in front. */
  readonly angle: number;
  readonly liftsPerMinute: number;
  /** Hours of such work without a rest as long as the work. */
  readonly hours: number;
  readonly grip: "good" | "fair" | "poor";
}

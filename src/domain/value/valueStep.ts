import type { Problem } from "../problem";

/** What is held from a day until the next step; money in ten-thousandths. */
export interface ValueStep {
  readonly day: number;
  readonly pieces: number;
  readonly value: number;
  /** Pieces without a value, counted in `pieces`. */
  readonly unvalued: number;
  /** Why it cannot be told how many are held. */
  piecesProblem: Problem | null;
  /** Why it cannot be told what they are worth, though it can how many they are. */
  valueProblem: Problem | null;
}

/** Who and what there is on the day, and its meal. */
export interface Crew {
  readonly dressers: number;
  readonly chairs: number;
  readonly cameras: number;
  /** null where no meal is kept. */
  readonly meal: { readonly afterHours: number; readonly minutes: number } | null;
  readonly crossingMinutes: number;
  /** To undress a look and hand a piece over to the next that wears it, where that is another talent's. */
  readonly handOverMinutes: number;
}

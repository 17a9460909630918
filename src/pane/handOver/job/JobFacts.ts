/** What letters and papers say of the job as a whole; "" where it is not said. */
export interface JobFacts {
  readonly job: string;
  readonly stylist: string;
  /** How the stylist is reached. */
  readonly reached: string;
  /** What the pictures are about, in a few sentences. */
  readonly direction: string;
  /** Where the pictures appear, and how lenders are credited. */
  readonly credit: string;
  /** Who answers for the pieces, and under which cover, as the letter of responsibility has it. */
  readonly responsible: string;
}

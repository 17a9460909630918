/** One argument of a worksheet function, as its comment describes it. */
export interface ParamDoc {
  readonly name: string;
  readonly optional: boolean;
  /** Whether it takes a range of cells. */
  readonly matrix: boolean;
  readonly text: string;
}

/** A call with literal arguments; it gives what `gives` says, or fails with a sentence that holds `fails`. */
export interface ExampleDoc {
  readonly formula: string;
  readonly gives: string | null;
  readonly fails: string | null;
}

/** What a worksheet function says of itself; written by the build from the comment over its binding. */
export interface FunctionDoc {
  readonly id: string;
  readonly family: string;
  /** The question it answers. */
  readonly answers: string;
  readonly summary: string;
  readonly params: readonly ParamDoc[];
  readonly returnsTable: boolean;
  readonly shape: string;
  readonly units: string;
  readonly blanks: string;
  readonly bounds: string;
  readonly errors: string;
  readonly source: string;
  readonly cautions: readonly string[];
  readonly examples: readonly ExampleDoc[];
}

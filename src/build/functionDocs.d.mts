/** What a worksheet function says of itself, read from the comment over its declaration. */
export interface FunctionDoc {
  readonly id: string;
  readonly file: string;
  readonly family: string;
  readonly answers: string;
  readonly summary: string;
  readonly params: readonly {
    readonly name: string;
    readonly optional: boolean;
    readonly matrix: boolean;
    readonly text: string;
  }[];
  readonly returnsTable: boolean;
  readonly shape: string;
  readonly units: string;
  readonly blanks: string;
  readonly bounds: string;
  readonly errors: string;
  readonly source: string;
  readonly cautions: readonly string[];
  readonly examples: readonly {
    readonly formula: string;
    readonly gives: string | null;
    readonly fails: string | null;
  }[];
}

export function functionDocs(files?: readonly string[]): FunctionDoc[];

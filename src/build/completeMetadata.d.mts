/** The metadata of the functions as the host reads it. */
export interface FunctionsMetadata {
  readonly allowCustomDataForDataTypeAny: true;
  readonly allowErrorForDataTypeAny: true;
  readonly functions: readonly {
    readonly id: string;
    readonly name: string;
    readonly description: string;
    readonly parameters: readonly {
      readonly name: string;
      readonly description: string;
      readonly type: string;
      readonly optional?: boolean;
      readonly dimensionality?: "matrix";
    }[];
    readonly result: { readonly type: "any"; readonly dimensionality?: "matrix" };
  }[];
}

export function completeMetadata(json: unknown): FunctionsMetadata;

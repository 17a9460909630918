/** One parameter as the vendor's metadata generator writes it. */
export interface ParameterMetadata {
  readonly name: string;
  readonly description?: string;
  readonly type?: string;
  readonly dimensionality?: "scalar" | "matrix";
  readonly optional?: boolean;
  readonly repeating?: boolean;
}

/** One function of functions.json, the file that Excel reads. */
export interface FunctionMetadata {
  readonly id: string;
  readonly name: string;
  readonly description?: string;
  readonly parameters: readonly ParameterMetadata[];
}

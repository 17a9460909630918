import { FunctionType, type IFunctionInfo } from "@univerjs/engine-formula";
import type { FunctionMetadata } from "./FunctionMetadata";

/** What the grid shows while a formula is typed, from the same metadata that Excel reads. */
export function functionDescriptions(functions: readonly FunctionMetadata[], namespace: string): IFunctionInfo[] {
  return functions.map(({ name, description = "", parameters }) => ({
    functionName: `${namespace}.${name}`,
    aliasFunctionName: `${namespace}.${name}`,
    functionType: FunctionType.User,
    description,
    abstract: description,
    functionParameter: parameters.map((parameter) => ({
      name: parameter.name,
      detail: parameter.description ?? "",
      example: parameter.dimensionality === "matrix" ? "A1:F20" : "A1",
      require: parameter.optional === true ? 0 : 1,
      repeat: parameter.repeating === true ? 1 : 0,
    })),
  }));
}

/** Made by the bench build from the folder of bindings: the functions by id, and the metadata that Excel gets too. */
declare module "tackstitch:bindings" {
  export const functionOf: Readonly<Record<string, (...args: unknown[]) => unknown>>;
  export const metadata: readonly import("./FunctionMetadata").FunctionMetadata[];
}

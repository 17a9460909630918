/** The call of a function with these arguments, each as a formula writes it ("" left out); those left out at the end are not written. */
export function composeFormula(id: string, args: readonly string[]): string {
  let count = args.length;
  while (count > 0 && args[count - 1] === "") count -= 1;
  return `=TACK.${id}(${args.slice(0, count).join(",")})`;
}

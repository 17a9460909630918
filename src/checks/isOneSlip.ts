/**
 * Whether two texts differ by one slip of the keyboard: a letter left out, put in, exchanged for another, or two neighbours
 * the wrong way round. Equal texts do not.
 */
export function isOneSlip(one: string, other: string): boolean {
  const [short, long] = one.length <= other.length ? [one, other] : [other, one];
  if (long.length - short.length > 1 || one === other) return false;
  let at = 0;
  while (at < short.length && short[at] === long[at]) at++;
  const rest = (text: string, from: number): string => text.slice(from);
  if (long.length > short.length) return rest(short, at) === rest(long, at + 1);
  if (rest(short, at + 1) === rest(long, at + 1)) return true;
  return short[at] === long[at + 1] && short[at + 1] === long[at] && rest(short, at + 2) === rest(long, at + 2);
}

/**
 * Minutes to change from one look to the next, by the pieces that differ.
 *
 * Both looks are lists of kinds of garment, a kind as often as it is worn. What both wear as often stays on;
 * every other piece is taken off or put on and counts the minutes of its kind. `minutesOf` knows every kind given.
 */
export function changeMinutes(
  wearing: readonly string[],
  next: readonly string[],
  minutesOf: (kind: string) => number,
): number {
  const surplus = new Map<string, number>();
  for (const kind of wearing) surplus.set(kind, (surplus.get(kind) ?? 0) + 1);
  for (const kind of next) surplus.set(kind, (surplus.get(kind) ?? 0) - 1);
  // Whole hundredths are added, so that 0.1 and 0.2 minutes make 0.3.
  let hundredths = 0;
  for (const [kind, count] of surplus) hundredths += Math.abs(count) * Math.round(minutesOf(kind) * 100);
  return hundredths / 100;
}

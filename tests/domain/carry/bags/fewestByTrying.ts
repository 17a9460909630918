/** The fewest bags, by trying every bag for every thing: slow, and obviously right. */
export function fewestByTrying(weights: readonly number[], capacity: number): number {
  let fewest = weights.length;
  const loads: number[] = [];
  const place = (index: number): void => {
    if (loads.length >= fewest) return;
    if (index === weights.length) {
      fewest = loads.length;
      return;
    }
    for (let bag = 0; bag <= loads.length; bag++) {
      const before = loads[bag] ?? 0;
      if (before + weights[index]! > capacity) continue;
      loads[bag] = before + weights[index]!;
      place(index + 1);
      if (before === 0 && bag === loads.length - 1) loads.pop();
      else loads[bag] = before;
    }
  };
  place(0);
  return fewest;
}

/** What is left of square costs when a best assignment's prices are taken off (Kuhn 1955): never below 0, and 0 along that assignment. */
export interface ReducedCosts {
  readonly costs: readonly (readonly number[])[];
  /** What every assignment of rows to columns costs at least. */
  readonly taken: number;
}

/** The Hungarian method, row after row along shortest augmenting paths. Infinity is no way; one assignment must be possible. */
export function reducedCosts(costs: readonly (readonly number[])[]): ReducedCosts {
  const size = costs.length;
  const rowPrice = new Array<number>(size).fill(0);
  const columnPrice = new Array<number>(size).fill(0);
  const rowOf = new Array<number>(size).fill(-1);
  for (let added = 0; added < size; added++) {
    const distance = new Array<number>(size).fill(Infinity);
    const cameFrom = new Array<number>(size).fill(-1);
    const isDone = new Array<boolean>(size).fill(false);
    let row = added;
    let at = -1;
    let way = 0;
    do {
      let next = -1;
      for (let column = 0; column < size; column++) {
        if (isDone[column]) continue;
        const reached = way + costs[row]![column]! - rowPrice[row]! - columnPrice[column]!;
        if (reached < distance[column]!) {
          distance[column] = reached;
          cameFrom[column] = at;
        }
        if (next < 0 || distance[column]! < distance[next]!) next = column;
      }
      at = next;
      way = distance[at]!;
      isDone[at] = true;
      row = rowOf[at]!;
    } while (row >= 0);
    rowPrice[added]! += way;
    for (let column = 0; column < size; column++) {
      if (!isDone[column] || column === at) continue;
      columnPrice[column]! -= way - distance[column]!;
      rowPrice[rowOf[column]!]! += way - distance[column]!;
    }
    while (at >= 0) {
      const before = cameFrom[at]!;
      rowOf[at] = before < 0 ? added : rowOf[before]!;
      at = before;
    }
  }
  return {
    costs: costs.map((line, from) => line.map((cost, to) => cost - rowPrice[from]! - columnPrice[to]!)),
    taken: [...rowPrice, ...columnPrice].reduce((sum, price) => sum + price, 0),
  };
}

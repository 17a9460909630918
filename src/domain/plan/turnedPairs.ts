/** How many pairs of things stand the other way about than they are numbered. */
export function turnedPairs(order: readonly number[]): number {
  let turned = 0;
  order.forEach((thing, place) => {
    for (let later = place + 1; later < order.length; later++) if (order[later]! < thing) turned++;
  });
  return turned;
}

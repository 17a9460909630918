/** Calls that wait for the one before, for what reads before it writes. `run` must never reject. */
export function oneAfterAnother<A extends unknown[], T>(run: (...args: A) => Promise<T>): (...args: A) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve();
  return (...args) => {
    const next = last.then(() => run(...args));
    last = next;
    return next;
  };
}

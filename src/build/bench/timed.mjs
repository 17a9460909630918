/** Milliseconds of each of some named functions, run in turn so that what slows one slows the others; the first rounds only warm up. */
export function timed(runs, functions) {
  const times = Object.fromEntries(Object.keys(functions).map((name) => [name, []]));
  for (let run = -3; run < runs; run++) {
    for (const [name, call] of Object.entries(functions)) {
      const start = performance.now();
      call();
      if (run >= 0) times[name].push(performance.now() - start);
    }
  }
  return times;
}

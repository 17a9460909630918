/**
 * An example as a formula and what it gives or fails with: { formula, gives, fails }, of the last two one is null.
 * The formula ends with the bracket that closes its first one; brackets inside quoted text do not count. null where it is none.
 */
export function splitExample(example) {
  let depth = 0;
  let quoted = false;
  for (let place = 0; place < example.length; place++) {
    const character = example[place];
    if (character === '"') quoted = !quoted;
    if (quoted) continue;
    if (character === "(") depth++;
    if (character !== ")" || --depth > 0) continue;
    const outcome = /^ (gives|fails) (.+)$/.exec(example.slice(place + 1));
    if (!example.startsWith("=TACK.") || outcome === null) return null;
    const [, word, what] = outcome;
    return {
      formula: example.slice(0, place + 1),
      gives: word === "gives" ? what : null,
      fails: word === "fails" ? what : null,
    };
  }
  return null;
}

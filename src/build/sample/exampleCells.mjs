/** Splits at a separator that stands outside quotes and braces. */
function splitOutside(text, separator) {
  const parts = [];
  let [depth, quoted, from] = [0, false, 0];
  for (let at = 0; at < text.length; at++) {
    if (text[at] === '"') quoted = !quoted;
    else if (quoted) continue;
    else if (text[at] === "{" || text[at] === "(") depth++;
    else if (text[at] === "}" || text[at] === ")") depth--;
    else if (text[at] === separator && depth === 0) {
      parts.push(text.slice(from, at));
      from = at + 1;
    }
  }
  return [...parts, text.slice(from)];
}

/** One cell as it is typed: what stands in quotes is text. */
function typed(cell) {
  if (cell === "TRUE" || cell === "FALSE") return cell === "TRUE";
  const text = /^".*"$/.test(cell) ? cell.slice(1, -1).replaceAll('""', '"') : cell;
  return /^[-+]?\d*\.?\d+$/.test(cell) ? Number(cell) : text === "" ? "" : `'${text}`;
}

/** What an example says a function gives, as rows of typed cells; days and times of day stay text. */
export function exampleCells(gives) {
  if (!gives.startsWith("{")) return [[typed(gives.trim())]];
  return splitOutside(gives.slice(1, -1), ";").map((row) => splitOutside(row, ",").map((cell) => typed(cell.trim())));
}

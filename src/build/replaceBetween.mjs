/** The text with what stands between `<!-- name:begin -->` and `<!-- name:end -->` replaced. */
export function replaceBetween(text, name, content) {
  const begin = `<!-- ${name}:begin -->`;
  const end = `<!-- ${name}:end -->`;
  const from = text.indexOf(begin);
  const until = text.indexOf(end);
  if (from < 0 || until < from) throw new Error(`README.md needs the lines ${begin} and ${end}, in this order.`);
  return `${text.slice(0, from + begin.length)}\n\n${content}\n\n${text.slice(until)}`;
}

/**
 * The functions' metadata as the generator wrote it, made complete.
 *
 * The generator takes the whole comment for the description, while argument help has room for the first
 * paragraph; it cannot say that errors inside a range reach the function (allowErrorForDataTypeAny), without
 * which one #N/A in a column would be the whole result; and it leaves out the type of a result that spills.
 * Throws with every fault found, since a function with wrong metadata is one that does not work.
 */
export function completeMetadata(json) {
  const { functions, ...rest } = typeof json === "string" ? JSON.parse(json) : json;
  const faults = [];
  const seen = new Set();
  const completed = functions.map((entry) => {
    const id = entry.id.toUpperCase();
    if (seen.has(id)) faults.push(`${id} is declared twice`);
    seen.add(id);
    if (!/^[A-Z][A-Z0-9._]{2,127}$/.test(id))
      faults.push(`${id} is no id: 3 to 128 letters, digits, dots or underscores`);
    const description = firstParagraph(entry.description);
    if (description === "") faults.push(`${id} has no description`);
    for (const parameter of entry.parameters) {
      if (!parameter.description) faults.push(`${id}: parameter ${parameter.name} has no description`);
    }
    return {
      ...entry,
      description,
      parameters: entry.parameters.map((parameter) => ({
        ...parameter,
        description: oneLine(parameter.description ?? ""),
      })),
      result: {
        ...entry.result,
        type: "any",
        ...(entry.result?.dimensionality === "matrix" && { dimensionality: "matrix" }),
      },
      options: { ...entry.options },
    };
  });
  if (faults.length > 0) throw new Error(`The functions' metadata is not complete:\n${faults.join("\n")}`);
  return { ...rest, allowCustomDataForDataTypeAny: true, allowErrorForDataTypeAny: true, functions: completed };
}

function firstParagraph(text = "") {
  return oneLine(text.trim().split(/\r?\n[ \t]*\r?\n/)[0] ?? "");
}

function oneLine(text) {
  return text.replace(/\s+/g, " ").trim();
}

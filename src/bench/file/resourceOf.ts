interface Resources {
  readonly resources?: readonly { readonly name: string; readonly data: string }[];
}

/** What one of the grid's plugins keeps of a workbook, by sheet. */
export function resourceOf<T>({ resources }: Resources, plugin: string): Readonly<Partial<Record<string, T>>> {
  const text = resources?.find(({ name }) => name === plugin)?.data ?? "";
  return text === "" ? {} : (JSON.parse(text) as Readonly<Partial<Record<string, T>>>);
}

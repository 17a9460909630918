/** The sentence of a template: each {{name}} gives way to its value. */
export function sayMessage(template: string, data: Readonly<Record<string, string | number>>): string {
  return template.replace(/\{\{(\w+)\}\}/g, (whole, name: string) => {
    const value = data[name];
    return value === undefined ? whole : String(value);
  });
}

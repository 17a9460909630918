/** An element of the bench's page, which is written by hand beside this code. */
export function element<T extends HTMLElement = HTMLElement>(id: string): T {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`The page has no element "${id}"`);
  return found as T;
}

/** The elements of one name in a part, whole, whatever their prefix; they must not hold one another. */
export function elementsOf(xml: string, name: string): string[] {
  return xml.match(new RegExp(`<((?:\\w+:)?)${name}(?:\\s[^>]*?)?(?:/>|>[\\s\\S]*?</\\1${name}>)`, "g")) ?? [];
}

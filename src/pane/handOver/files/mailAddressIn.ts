/** The first mail address that a text names; "" where there is none. */
export function mailAddressIn(text: string): string {
  return /[\w.!#$%&'*+/=?^`{|}~-]{1,64}@[A-Za-z0-9-]{1,63}(?:\.[A-Za-z0-9-]{1,63})+/.exec(text)?.[0] ?? "";
}

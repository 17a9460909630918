/** Serial 25569 is 1970-01-01. */
const EPOCH_SERIAL = 25_569;

/** The serial day of this computer's clock, where it stands. */
export function today(): number {
  const now = new Date();
  return Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()) / 86_400_000 + EPOCH_SERIAL;
}

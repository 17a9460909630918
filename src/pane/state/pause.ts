/** Ends after the host has had a turn to paint and to take keys. */
export function pause(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 0));
}

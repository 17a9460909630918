/** The link that a Photo cell holds, as it is typed; "" where it holds none. Nobody here follows it. */
export function linkIn(photo: string): string {
  return /^https?:\/\/[^\s<>"']+$/i.test(photo.trim()) ? photo.trim() : "";
}

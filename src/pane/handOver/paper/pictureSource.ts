/** A picture that the page itself holds, as an attribute's value; "" for anything else, so that nothing is ever fetched. */
export function pictureSource(dataUrl: string): string {
  return /^data:image\/(?:jpeg|png|webp);base64,[A-Za-z0-9+/]+={0,2}$/.test(dataUrl) ? dataUrl : "";
}

/** What tells a picture from others, and from itself at another size, since Excel draws it as large as it is shown. */
export function pictureKey(sheetId: string, shapeId: string, widthPoints: number, heightPoints: number): string {
  return [sheetId, shapeId, Math.round(widthPoints), Math.round(heightPoints)].join("\n");
}

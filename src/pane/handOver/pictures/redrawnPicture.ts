import type { LookPicture } from "./LookPicture";

/** Enough to fill a phone or half a page; larger files would make one file of many looks too heavy to send. */
const LONGEST_SIDE_PX = 1400;
const QUALITY = 0.82;

/**
 * A picture drawn anew on a canvas, upright, as JPEG: what the camera wrote beside the picture (where it was taken, with what, by
 * whom) is left behind. null where it is no picture that the browser can read.
 */
export async function redrawnPicture(picture: Blob, fileName: string): Promise<LookPicture | null> {
  try {
    const bitmap = await createImageBitmap(picture, { imageOrientation: "from-image" });
    const scale = Math.min(1, LONGEST_SIDE_PX / Math.max(bitmap.width, bitmap.height));
    const canvas = document.createElement("canvas");
    canvas.width = Math.max(1, Math.round(bitmap.width * scale));
    canvas.height = Math.max(1, Math.round(bitmap.height * scale));
    const context = canvas.getContext("2d");
    if (context === null) return null;
    // JPEG knows nothing see-through; paper is white.
    context.fillStyle = "#fff";
    context.fillRect(0, 0, canvas.width, canvas.height);
    context.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
    bitmap.close();
    return { fileName, dataUrl: canvas.toDataURL("image/jpeg", QUALITY) };
  } catch {
    return null;
  }
}

export const LONGEST_SIDE_PX = 1600;
const QUALITY = 0.85;

/** Keeps the shape; a photo that is small enough keeps its size. */
export function fitted(width: number, height: number): { width: number; height: number } {
  const scale = Math.min(1, LONGEST_SIDE_PX / Math.max(width, height));
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}

/** Draws the photo anew as a JPEG that a bad line can carry; where it was taken goes with its other data. */
export async function resized(photo: Blob): Promise<Blob> {
  const picture = await createImageBitmap(photo);
  const { width, height } = fitted(picture.width, picture.height);
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  canvas.getContext('2d')?.drawImage(picture, 0, 0, width, height);
  picture.close();
  return new Promise((resolve, reject) =>
    canvas.toBlob((made) => (made ? resolve(made) : reject(new Error('no picture'))), 'image/jpeg', QUALITY),
  );
}

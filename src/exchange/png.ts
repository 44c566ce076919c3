import type { Picture } from './picture.ts';

/** Boards shrink or refuse pictures of 1200 dots and more across (common practice). */
const WIDEST = 1180;

/** A picture as PNG, drawn by the browser. Rejects where it cannot. */
export async function pngOf({ svg, width, height }: Picture): Promise<Blob> {
  const scale = WIDEST / width;
  const image = new Image();
  const url = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    image.src = url;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = WIDEST;
    canvas.height = Math.round(height * scale);
    const context = canvas.getContext('2d');
    if (context === null) throw new Error('pngOf: the browser must draw, got no canvas');
    context.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await blobOf(canvas);
  } finally {
    URL.revokeObjectURL(url);
  }
}

const blobOf = (canvas: HTMLCanvasElement): Promise<Blob> =>
  new Promise((resolve, reject) => {
    canvas.toBlob((blob) => {
      if (blob === null) reject(new Error('pngOf: the browser must write a PNG, got none'));
      else resolve(blob);
    }, 'image/png');
  });

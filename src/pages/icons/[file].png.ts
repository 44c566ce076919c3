import { readFileSync } from 'node:fs';
import type { APIRoute, GetStaticPaths } from 'astro';
import sharp from 'sharp';
import { type IconFile, iconFiles } from '../../layouts/icon-files.ts';
import { light } from '../../styles/tokens.ts';

export const getStaticPaths = (() =>
  iconFiles.map((icon) => ({ params: { file: icon.file }, props: { ...icon } }))) satisfies GetStaticPaths;

/** Pixels that the drawing has of its own, on each side. */
const drawn = 32;

export const GET: APIRoute<IconFile> = async ({ props: { pixels, purpose } }) => {
  const mark = purpose === 'maskable' ? Math.round(pixels * 0.6) : pixels;
  const before = Math.floor((pixels - mark) / 2);
  const after = pixels - mark - before;
  const picture = sharp(readFileSync('public/icon.svg'), { density: (72 * mark) / drawn })
    .resize(mark, mark)
    .extend({ top: before, left: before, bottom: after, right: after, background: light.paper });
  // telephones draw what is transparent black
  const png = await picture.flatten({ background: light.paper }).png({ palette: true }).toBuffer();
  return new Response(new Uint8Array(png), { headers: { 'content-type': 'image/png' } });
};

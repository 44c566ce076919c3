// Takes the README's pictures from the built site: `npm run build && npm run pictures`.
import { mkdir, writeFile } from 'node:fs/promises';
import { chromium } from '@playwright/test';
import sharp from 'sharp';
import { serveSite } from '../../src/build/site-server.ts';
import { built } from '../site/under-base.mjs';
import { awake } from './awake.ts';
import { ensureChromium } from './chromium.mjs';
import { flags } from './flags.ts';
import { PICTURES, readmePictures } from './readme-pictures.ts';

/** Ink, paper, one colour and what lies between them. */
const COLOURS = 48;

await mkdir(PICTURES, { recursive: true });
const site = await serveSite({ ...built, host: '127.0.0.1', port: 0 });
const browser = await chromium.launch({ executablePath: ensureChromium(), args: flags });
for (const { name, path, viewport, from } of readmePictures) {
  const page = await browser.newPage({ viewport, reducedMotion: 'reduce', serviceWorkers: 'block' });
  await page.goto(new URL(path, site.url).href);
  await awake(page);
  if (from) await page.locator(from).evaluate((place) => place.scrollIntoView({ block: 'start' }));
  const picture = await sharp(await page.screenshot())
    .png({ palette: true, colours: COLOURS, dither: 0, effort: 10 })
    .toBuffer();
  await writeFile(`${PICTURES}/${name}.png`, picture);
  await page.close();
  console.log(`${PICTURES}/${name}.png: ${(picture.length / 1000).toFixed(1)} kB`);
}
await browser.close();
await site.close();

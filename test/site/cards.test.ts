import { createHash } from 'node:crypto';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { addressCode } from '../../src/exchange/address-code.ts';
import { cardProblems, codeProblems } from './cards.ts';
import type { Site } from './links.ts';

const made: string[] = [];
afterEach(() => {
  for (const directory of made.splice(0)) rmSync(directory, { recursive: true, force: true });
});

/** The beginning of a PNG of a size. */
function png(width: number, height: number): Buffer {
  const bytes = Buffer.alloc(24);
  Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]).copy(bytes);
  bytes.writeUInt32BE(width, 16);
  bytes.writeUInt32BE(height, 20);
  return bytes;
}

const origin = 'https://club.example';
const address = `${origin}/watt/learn/sums/adding/`;
const nameOf = (bytes: Buffer): string =>
  `a.${createHash('sha256').update(bytes).digest('hex').slice(0, 10)}.png`;

/** A site of one page under a base path, with one card. */
function site(html: string, card = png(1200, 630), name = nameOf(card)): Site {
  const directory = mkdtempSync(join(tmpdir(), 'cards-'));
  made.push(directory);
  mkdirSync(join(directory, 'cards'));
  writeFileSync(join(directory, 'cards', name), card);
  return { directory, base: '/watt/', pages: [{ path: '/learn/sums/adding/', file: 'a.html', html }] };
}

const meta = (name: string, content: string): string => `<meta property="${name}" content="${content}">`;
/** A whole head, with what the test changes. */
function head(changed: Readonly<Record<string, string>> = {}): string {
  const said = {
    'og:type': 'article',
    'og:site_name': 'A site',
    'og:title': 'A title',
    'og:description': 'A description',
    'og:url': address,
    'og:image': `${origin}/watt/cards/${nameOf(png(1200, 630))}`,
    'og:image:width': '1200',
    'og:image:height': '630',
    'og:image:alt': 'What it shows',
    'twitter:card': 'summary_large_image',
    ...changed,
  };
  const tags = Object.entries(said).map(([name, content]) => meta(name, content));
  return `<link rel="canonical" href="${address}">${tags.join('')}`;
}
const problems = (html: string, card?: Buffer, name?: string): readonly string[] =>
  cardProblems(site(html, card, name), origin);

describe('the preview of a page', () => {
  test('is whole where everything is said and the card is there', () => {
    expect(problems(head())).toEqual([]);
  });

  test.each([
    ['og:image:alt', '', /no og:image:alt/],
    ['og:url', `${origin}/watt/`, /not the canonical/],
    ['og:image:height', '600', /another size than is said/],
    ['twitter:card', 'summary', /no large card/],
    ['og:image', `${origin}/cards/a.png`, /must lie at/],
    ['og:image', `${origin}/watt/cards/none.png`, /no card at/],
  ])('is faulty where %s is “%s”', (name, content, told) => {
    expect(problems(head({ [name]: content })).join()).toMatch(told);
  });

  test('is faulty where the card has another size or the address another hash', () => {
    const small = png(600, 315);
    const image = { 'og:image': `${origin}/watt/cards/${nameOf(small)}` };
    expect(problems(head(image), small).join()).toMatch(/a card of 600 x 315/);
    const stale = { 'og:image': `${origin}/watt/cards/a.0123456789.png` };
    expect(problems(head(stale), png(1200, 630), 'a.0123456789.png').join()).toMatch(/without the hash/);
  });

  test('is faulty where the page names another host than that of the site', () => {
    expect(cardProblems(site(head()), 'https://other.example').join()).toMatch(/canonical must begin with/);
  });
});

describe('a printed code', () => {
  const code = (to: string, beside: string): string => {
    const { size, path } = addressCode(to);
    return `${head()}<div class="printed-address"><svg viewBox="0 0 ${size} ${size}" data-code><path d="${path}"></path></svg><p>${beside}</p></div>`;
  };

  test('leads to its page, with the address beside it', () => {
    expect(codeProblems(site(code(address, address)))).toEqual([]);
  });

  test('is missed on a lesson, and told where it leads elsewhere or stands alone', () => {
    expect(codeProblems(site(head()))).toEqual(['a.html: no code of its address']);
    const moved = head().replaceAll('/sums/adding/', '/sums/added/');
    expect(codeProblems(site(moved)), 'a page that leads on').toEqual([]);
    expect(codeProblems(site(code(`${origin}/`, address)))).toEqual([`a.html: the code leads to ${origin}/`]);
    expect(codeProblems(site(code(address, 'here')))).toEqual([
      'a.html: the address does not stand beside its code',
    ]);
  });
});

import { describe, expect, test } from 'vitest';
import { joinSheets } from '../../src/build/join-sheets.ts';

const SHEETS: Readonly<Record<string, string>> = {
  '/s/a.css': 'p{color:red}',
  '/s/b.css': 'p{color:blue}\n',
  '/s/c.css': '@import "a.css";',
};
const read = (address: string): string => SHEETS[address] ?? '';
const join = (html: string) => joinSheets(html, read, (name) => `/s/${name}`);
const link = (name: string): string => `<link rel="stylesheet" href="/s/${name}.css">`;

describe('the style sheets of a page', () => {
  test('become one where the first stood, in their order', () => {
    const { html, sheet } = join(`<meta>${link('a')}<script></script>${link('b')}<title>t</title>`);
    expect(sheet?.css).toBe('p{color:red}\np{color:blue}\n');
    expect(html).toBe(
      `<meta><link rel="stylesheet" href="/s/${sheet?.name}"><script></script><title>t</title>`,
    );
    expect(join(link('b') + link('a')).sheet?.css, 'the other order').toBe('p{color:blue}\np{color:red}\n');
  });

  test('have a name that is the same for the same sheets only', () => {
    const [one, again, other] = [
      ['a', 'b'],
      ['a', 'b'],
      ['b', 'a'],
    ].map((names) => join(names.map(link).join('')));
    expect(one?.sheet?.name).toMatch(/^sheet\.[0-9a-f]{8}\.css$/);
    expect(again?.sheet?.name).toBe(one?.sheet?.name);
    expect(other?.sheet?.name).not.toBe(one?.sheet?.name);
  });

  test('stay as they are where there is one or none', () => {
    for (const html of ['<p>', `<p>${link('a')}`]) expect(join(html)).toEqual({ html, sheet: undefined });
  });

  test('are not joined when one asks for another, which would have to come first', () => {
    expect(() => join(link('a') + link('c'))).toThrow('wish no @import');
  });
});

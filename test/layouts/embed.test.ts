import { describe, expect, it, test } from 'vitest';
import { withState } from '../../src/layouts/embed-links.ts';
import { embedSnippet } from '../../src/layouts/embed-snippet.ts';
import { attributeValues } from '../site/links.ts';
import { invalidMarkup } from '../site/markup.ts';

const framed = {
  title: '“A” & <B> "C"',
  address: 'https://radio-club.example.org/embed/budget/?a=1&v=1',
  source: 'https://radio-club.example.org/learn/a/b/#figure',
};

describe('the lines for another page', () => {
  const html = embedSnippet(framed);

  it('are valid HTML wherever they are pasted', () => {
    const page = (body: string): string =>
      `<!DOCTYPE html><html lang="en"><head><title>a</title></head><body>${body}</body></html>`;
    const site = (body: string) => ({
      directory: '',
      base: '/',
      pages: [{ file: 'a.html', path: '/a', html: page(body) }],
    });
    // the one rule that is this site's own and not the standard's: a page of somebody else's may set a width in place
    expect(invalidMarkup(site(html.replace(/ style="[^"]*"/, '')))).toEqual([]);
    expect(
      invalidMarkup(site(embedSnippet({ ...framed, title: 'a' }).replace('</iframe>', ''))).length,
    ).toBeGreaterThan(0);
  });

  it('lead to the figure and to where it is from, and name it', () => {
    expect(attributeValues(html, ['src'])).toEqual([framed.address]);
    expect(attributeValues(html, ['href'])).toEqual([framed.source]);
    expect(html).toContain('title="“A” &amp; &lt;B&gt; &quot;C&quot;"');
  });

  it('let the frame do what it needs, and not leave the page around it', () => {
    const [allowed = ''] = attributeValues(html, ['sandbox']);
    expect(allowed.split(' ')).toEqual(
      expect.arrayContaining(['allow-scripts', 'allow-same-origin', 'allow-popups']),
    );
    expect(allowed).not.toMatch(/top-navigation|modals|downloads|forms/);
  });
});

test.each([
  ['https://a.example/learn/a/b/#figure', '?x=1&v=1', 'https://a.example/learn/a/b/?x=1&v=1#figure'],
  ['https://a.example/learn/a/b/?old=2&v=1#two', '?x=1&v=1', 'https://a.example/learn/a/b/?x=1&v=1#two'],
  ['https://a.example/learn/a/b/?old=2&v=1#two', '', 'https://a.example/learn/a/b/#two'],
])('a link to %s carries the state %s', (href, search, wished) =>
  expect(withState(href, search)).toBe(wished),
);

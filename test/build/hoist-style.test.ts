import { describe, expect, test } from 'vitest';
import { hoistedCss, hoistStyles, type Rules } from '../../src/build/hoist-style.ts';

const hoist = (html: string): { html: string; css: string } => {
  const rules: Rules = new Map();
  return { html: hoistStyles(html, rules), css: hoistedCss(rules) };
};

describe('a style attribute', () => {
  test('becomes a class with the same declarations, each of them important', () => {
    const { html, css } = hoist('<p style="color:red;width:1px">a</p>');
    const name = /^<p class="(s-[0-9a-f]{8})">a<\/p>$/.exec(html)?.[1];
    expect(css).toBe(`.${name}{color:red!important;width:1px!important}`);
  });

  test('joins the classes that the tag has', () => {
    expect(hoist('<p class="a b" style="color:red">').html).toMatch(/^<p class="s-[0-9a-f]{8} a b">$/);
  });

  test('shares its rule with the same one elsewhere', () => {
    const { css } = hoist('<p style="color:red"></p><i style="color:red;"></i>');
    expect(css.split('\n')).toHaveLength(1);
  });

  test('keeps the quotes of its declarations', () => {
    expect(hoist('<p style="font-family:&quot;A&amp;B;C&quot;">').css).toContain(
      '{font-family:"A&B;C"!important}',
    );
  });

  test('is left alone where it is text, a script, a style sheet or a comment', () => {
    const html =
      '<script>a=\'<p style="x:y">\'</script><style>/* <p style="x:y"> */</style><!-- <p style="x:y"> -->';
    expect(hoist(html)).toEqual({ html, css: '' });
  });

  test('is found behind attributes that look like the end of a tag', () => {
    expect(hoist('<a title="a > b" style="color:red">').html).not.toContain('style=');
  });

  test('fails the build inside an island, however deep, and not after it', () => {
    const island = (inside: string) => `<astro-island uid="1">${inside}</astro-island>`;
    expect(() => hoist(island('<div><p style="left:1px"></p></div>'))).toThrow(
      'hoistStyles: no style attribute inside an island, got <p style="left:1px">',
    );
    expect(() => hoist(island(`${island('')}<p style="left:1px"></p>`))).toThrow('inside an island');
    expect(hoist(`${island('')}<p style="left:1px"></p>`).css).toContain('left:1px');
  });
});

test('the stylesheet does not depend on the order of the pages', () => {
  const one: Rules = new Map();
  const other: Rules = new Map();
  for (const html of ['<p style="a:b">', '<p style="c:d">']) hoistStyles(html, one);
  for (const html of ['<p style="c:d">', '<p style="a:b">']) hoistStyles(html, other);
  expect(hoistedCss(one)).toBe(hoistedCss(other));
});

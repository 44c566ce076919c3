import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { SITE_NAME } from '../../src/text/site-name.ts';
import { code, filesBelow } from '../rules/sources.ts';

test('the site’s name is typed once', () => {
  const typed = filesBelow('src', [...code, '.mdx']).filter(({ text }) => text.includes(SITE_NAME));
  expect(typed.map(({ path }) => path)).toEqual(['src/text/site-name.ts']);
});

test('its mark and the README say it', () => {
  const [icon] = filesBelow('public', ['icon.svg']);
  expect(icon?.text).toContain(`<title>${SITE_NAME}</title>`);
  expect(readFileSync('README.md', 'utf8')).toMatch(new RegExp(`^# ${SITE_NAME.replace('?', '\\?')}\n`));
});

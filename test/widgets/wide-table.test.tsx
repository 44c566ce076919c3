import render from 'preact-render-to-string';
import { expect, it } from 'vitest';
import { WideTable } from '../../src/widgets/parts/WideTable.tsx';

const cellsOf = (markup: string, tag: 'td' | 'th'): readonly string[] =>
  [...markup.matchAll(new RegExp(`<${tag}[^>]*>([^<]*)</${tag}>`, 'g'))].map(([, text = '']) => text);

it('gives each row its name and each column its own text, where two have the same head and where one has none', () => {
  const rows = [{ id: 'a', name: 'At 144 MHz', cells: ['0.10 dB', '0.2 dB', undefined] }];
  const markup = render(
    <WideTable caption="Place by place" columns={['At', 'U', 'U', 'Line']} rows={rows} />,
  );
  expect(cellsOf(markup, 'th')).toEqual(['At', 'U', 'U', 'Line', 'At 144 MHz']);
  expect(cellsOf(markup, 'td')).toEqual(['0.10 dB', '0.2 dB', '']);
  expect(markup).toContain('aria-label="Place by place"');
});

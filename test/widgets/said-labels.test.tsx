import { render } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { clubSheet } from '../../src/sheet/club.ts';
import { chainOf } from '../../src/sheet/evaluated-chain.ts';
import { twoPadsSheet } from '../../src/sheet/two-pads.ts';
import ReadingBandWidget from '../../src/widgets/reading-band/ReadingBandWidget.tsx';
import { withSaidLabels } from '../../src/widgets/reading-band/said-labels.ts';
import { answersOf, summarise } from '../../src/widgets/reading-band/words.ts';
import { BARE } from '../text/bare-symbols.ts';

const html = render(<ReadingBandWidget sheet={withSaidLabels(clubSheet())} />);

test('controls are named in words, and what is seen keeps its symbols', () => {
  const names = [...html.matchAll(/<label for="[^"]*" class="visually-hidden">([^<]*)</g)].map(
    ([, name = '']) => name,
  );
  expect(names).toContain('20 decibel pad: what it adds');
  expect(names).toContain('20 decibel pad: drag what it adds');
  for (const name of names) expect(name).not.toMatch(BARE);
  expect(html).toContain('<th scope="row">20 dB pad</th>');
});

test('the summary says the rung that decides in words, the answer on the page has it as it is written', () => {
  const chain = chainOf(withSaidLabels(clubSheet()));
  expect(summarise(chain)).toMatch(/20 decibel pad widens it most\.$/);
  expect(answersOf(chain)[2]?.figure).toBe('20 dB pad widens it most');
});

test('a label without symbols stays alone, and nothing else of a sheet changes', () => {
  for (const sheet of [clubSheet(), twoPadsSheet()]) {
    const { links, ...rest } = withSaidLabels(sheet);
    expect({ ...rest, links: links.map(({ said: _, ...link }) => link) }).toEqual(sheet);
    for (const { label, said } of links)
      expect(said === undefined).toBe(!BARE.test(label) && !/\d m /.test(label));
  }
});

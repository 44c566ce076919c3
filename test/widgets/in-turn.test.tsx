import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import render from 'preact-render-to-string';
import { expect, it } from 'vitest';
import { InTurn } from '../../src/widgets/parts/InTurn.tsx';

function Named({ children }: { readonly children?: ComponentChildren }) {
  return <p id={useId()}>{children}</p>;
}

const idsIn = (markup: string): readonly string[] =>
  [...markup.matchAll(/ id="([^"]+)"/g)].map(([, id = '']) => id);

it('stands whole in what the server writes, with ids that nothing else on the island has', () => {
  const markup = render(
    <>
      <Named>before</Named>
      <InTurn>
        <Named>first</Named>
        <InTurn>
          <Named>within</Named>
        </InTurn>
        <Named>second</Named>
      </InTurn>
      <InTurn>
        <Named>other</Named>
      </InTurn>
      <Named>after</Named>
    </>,
  );
  expect(markup.replace(/<[^>]+>/g, ' ').match(/\w+/g)).toEqual(
    'before first within second other after'.split(' '),
  );
  const ids = idsIn(markup);
  expect(ids).toHaveLength(6);
  expect(ids).toEqual([...new Set(ids)]);
});

it('does not change the ids round it by what it holds', () => {
  const around = (inside: ComponentChildren): string | undefined =>
    idsIn(
      render(
        <>
          <InTurn>{inside}</InTurn>
          <Named />
        </>,
      ),
    ).at(-1);
  expect(around([1, 2, 3].map((each) => <Named key={each} />))).toBe(around('nothing'));
});

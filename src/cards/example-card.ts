import { evaluatedExample } from '../examples/evaluated.ts';
import type { ChainExample, Example, SumExample } from '../examples/example.ts';
import { bandCard } from './chain-band.ts';
import type { CardContent } from './content.ts';
import { exampleFigure } from './example-figure.ts';
import { cardStrings as strings } from './strings.ts';

/** Longest value, and longest head of a value, that can be read at a glance, in letters. */
const GLANCE = { value: 26, head: 26 } as const;

/** The card of a worked example. @throws RangeError for one that comes to nothing. */
export const exampleCard = (example: Example): CardContent =>
  example.kind === 'chain' ? chainCard(example) : sumCard(example);

/** A level with its band, the same in watts end by end, and the band along its chain. */
function chainCard(example: ChainExample): CardContent {
  const { slug, title } = example;
  return bandCard(evaluatedExample(example).chain, { key: `example-${slug}`, title, called: `${title}:` });
}

function sumCard({ slug, title, outcomes }: SumExample): CardContent {
  const [first] = outcomes();
  if (first === undefined) throw new RangeError(`sumCard: ${slug} must have an outcome, got none`);
  const { big, small } = atAGlance(first.name, first.value('shown'));
  const alt = strings.outcomeAlt({ title, big, small });
  return { key: `example-${slug}`, title, big, small, drawn: exampleFigure(slug), alt };
}

/** What of an outcome stands large: its value, or the head of one that goes on behind a colon or a comma, or else its name. */
export function atAGlance(name: string, value: string): { readonly big: string; readonly small: string } {
  if (value.length <= GLANCE.value) return { big: value, small: name };
  const said = value.replace(/\.$/, '');
  for (const mark of [': ', ', ']) {
    const [head = '', ...rest] = said.split(mark);
    if (rest.length > 0 && head.length <= GLANCE.head)
      return { big: head, small: `${name}${mark}${rest.join(mark)}` };
  }
  return { big: name, small: value };
}

import { getCollection } from 'astro:content';
import { type Card, cardOf } from '../../cards/card.ts';
import { exampleCard } from '../../cards/example-card.ts';
import { lessonCard } from '../../cards/lesson-card.ts';
import { siteCard } from '../../cards/site-card.ts';
import { examples } from '../../examples/index.ts';

/** Every card, at the address that its bytes give it. */
export async function getStaticPaths() {
  const lessons = await getCollection('lessons');
  const contents = [
    siteCard(),
    ...examples.map(exampleCard),
    ...lessons.map(({ id, data }) => lessonCard({ id, ...data })),
  ];
  const cards = await Promise.all(contents.map(cardOf));
  return cards.map((card) => ({ params: { card: card.name.replace(/\.png$/, '') }, props: { card } }));
}

export const GET = ({ props }: { props: { card: Card } }): Response =>
  new Response(props.card.png, { headers: { 'content-type': 'image/png' } });

import { examples } from '../../examples/index.ts';
import { rowsOf, TOPICS, type TopicId } from '../../formulas/index.ts';
import { TOPIC_WORDS } from '../../formulas/topics.ts';
import { fixedTables, levelTable } from '../../tables/index.ts';
import type { Unnamed } from './unnamed.ts';

const one = (text: string) => [{ at: '', title: '', text }];

/** The worked examples, by what is asked and how it is answered. */
export const exampleDocuments = (): readonly Unnamed[] =>
  examples.map(({ slug, title, summary, question, method, steps, assumptions, cautions }) => ({
    kind: 'example',
    title,
    path: `/examples/${slug}/`,
    names: [],
    parts: [
      ...one(`${summary} ${question} ${method}`),
      ...steps().map((step) => ({ at: `step-${step.id}`, title: step.title, text: step.words ?? '' })),
      ...one([...assumptions, ...cautions].join(' ')),
    ],
  }));

/** The formulas, by what they answer, their letters in words, and the name of the function. */
export const formulaDocuments = (): readonly Unnamed[] =>
  (Object.keys(TOPICS) as TopicId[]).flatMap((topic) =>
    rowsOf(topic).map(({ id, words, symbols }): Unnamed => {
      const letters = Object.values(symbols).map((symbol) => symbol.words);
      return {
        kind: 'formula',
        title: words,
        path: `/reference/formulas/${topic}/#${id}`,
        names: [id],
        parts: [{ at: '', title: TOPIC_WORDS[topic].title, text: `${letters.join('; ')}.` }],
      };
    }),
  );

/** The tables to print, by what they say and what their columns are. */
export const tableDocuments = (): readonly Unnamed[] =>
  [levelTable(50), ...fixedTables()].map(({ id, title, words, columns }) => ({
    kind: 'table',
    title,
    path: `/reference/tables/#${id}`,
    names: [],
    parts: one(`${words} ${columns.map(({ what, unit = '' }) => `${what} ${unit}`.trim()).join('; ')}.`),
  }));

const page = (path: string, title: string, text: string): Unnamed => ({
  kind: 'page',
  title,
  path,
  names: [],
  parts: one(text),
});

/** Pages that are no lesson, example or the like, in words of their own. */
export const pageDocuments: readonly Unnamed[] = [
  page(
    '/learn/',
    'All lessons',
    'Four tracks, from decibels to a measurement that can be defended, in the order in which they build on each other; how far you are.',
  ),
  page(
    '/examples/',
    'All worked examples',
    'Measurements of a small transmitter step by step, each with a fixed address, text to copy and a way to put in your own numbers.',
  ),
  page(
    '/reference/formulas/',
    'Formula sheet',
    'Every formula that this site computes with, by topic: letters, units, source, and an example to change.',
  ),
  page(
    '/reference/checks/',
    'How we know the sums are right',
    'Published values and tables beside the values that this site computes: what agrees, what differs, and why.',
  ),
  page(
    '/bench/',
    'The bench',
    'Your own measurement: transmitter, method, readings, pads and cables, specification; the result in watts with its band, and the verdict.',
  ),
  page(
    '/bench/borrow/',
    'Borrow a calibration',
    'Carry a correction over from a better instrument to your own, or measure a pad or a cable at home.',
  ),
  page(
    '/bench/compare/',
    'Compare results',
    'Two or more measurements of one transmitter: whether they agree, and what they say together.',
  ),
  page(
    '/bench/instruments/',
    'Your instruments',
    'Your own meters, pads, cables and loads with their limits and certificates, kept in this browser.',
  ),
  page('/bench/sheets/', 'Your sheets', 'The measurements that you have kept in this browser.'),
  page(
    '/practice/',
    'Practice',
    'Questions by topic, revision at growing distances, a paper to sit, worksheets to print. None of them is an official question.',
  ),
  page('/practice/revision/', 'Revision', 'The questions that are due, from all topics.'),
  page(
    '/practice/paper/',
    'Sit a paper',
    'A mock paper of a length you choose, with or without a clock, and a review of every answer.',
  ),
  page(
    '/practice/worksheet/',
    'Worksheets',
    'Questions to print, with or without answers, up to ten different papers.',
  ),
  page(
    '/stage/compose/',
    'Put a talk together',
    'Steps of lessons and examples in an order of your own, for a club evening at the projector.',
  ),
  page(
    '/about/#cautions',
    'Cautions',
    'What to mind before a transmitter is keyed: dummy load, heat, radio frequency burns, mains earth, the limits of an input, beryllium oxide, exposure, licence conditions.',
  ),
  page(
    '/about/',
    'About this site',
    'What it is for, how the numbers are made, what it keeps and what it never sends, how to run a copy of your own.',
  ),
  page('/reference/corrections/', 'Corrections', 'What was wrong here, since when, and what it says now.'),
  page(
    '/reference/files/',
    'Files',
    'How the sheets, instruments and tables that the bench saves are made up, field by field.',
  ),
  page(
    '/reference/access/',
    'Access statement',
    'Accessibility: keyboard, screen reader, zoom, contrast, forced colours, less motion; what was tried on which pages, what was not, and what does not work.',
  ),
];

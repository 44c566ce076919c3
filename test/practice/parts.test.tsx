import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { blankGiven, type Given } from '../../src/practice/answering.ts';
import type { Answer } from '../../src/practice/answers.ts';
import type { Around } from '../../src/practice/facts.ts';
import type { PaperState } from '../../src/practice/paper-state.ts';
import { placeDrawing } from '../../src/practice/place-drawing.ts';
import { shown } from '../../src/practice/shown.ts';
import type { Book } from '../../src/practice/use-book.ts';
import { AnswerFields } from '../../src/practice/views/AnswerFields.tsx';
import { AroundContext } from '../../src/practice/views/context.ts';
import { LessonLink } from '../../src/practice/views/LessonLink.tsx';
import { PaperFields } from '../../src/practice/views/PaperSettings.tsx';
import { PaperTable } from '../../src/practice/views/PaperTable.tsx';
import { PlaceFigure } from '../../src/practice/views/PlaceFigure.tsx';
import { PrintedPaper } from '../../src/practice/views/PrintedPaper.tsx';
import { Problems } from '../../src/practice/views/Problems.tsx';
import { ProgressPart } from '../../src/practice/views/ProgressPart.tsx';
import { Round } from '../../src/practice/views/Round.tsx';
import { Solution } from '../../src/practice/views/Solution.tsx';
import { Waiting } from '../../src/practice/views/Waiting.tsx';
import { type Figure, placesOf } from '../../src/questions/bank/figure.ts';
import { allSittings, choiceSitting, orderSitting, placeSitting, typedSitting } from './sittings.ts';

const nothing = (): void => undefined;
const words = (html: string): string => html.replace(/<[^>]*>/g, ' ').replace(/\s+/g, ' ');

const book = (change: Partial<Book> = {}): Book => ({
  isRead: true,
  answers: new Map(),
  unreadable: 0,
  problem: undefined,
  add: async () => undefined,
  note: async () => undefined,
  clear: async () => true,
  ...change,
});

const answer = (day: number, change: Partial<Answer> = {}): Answer => ({
  at: `2031-05-0${day}T10:00:00.000Z`,
  seed: 1,
  grade: 'right',
  mistake: '',
  ...change,
});

describe('what was practised', () => {
  const part = (change: Partial<Book>): string => render(<ProgressPart book={book(change)} />);

  it('is nothing at first, and there is nothing to save or to forget', () => {
    const html = part({});
    expect(words(html)).toContain('Nothing practised yet.');
    expect(html.match(/<button[^>]*disabled/g)).toHaveLength(2);
  });

  it('is counted, and can be saved and forgotten', () => {
    const html = part({ answers: new Map([['a', [answer(1), answer(2)]]]) });
    expect(words(html)).toContain('2 answers to 1 question');
    expect(html).not.toMatch(/<button[^>]*disabled/);
  });

  it('tells of what a newer version left, which can be forgotten but not saved', () => {
    const html = part({ unreadable: 2 });
    expect(words(html)).toContain('2 questions have notes that this page cannot read');
    expect(html.match(/<button[^>]*disabled/g)).toHaveLength(1);
  });

  it('tells what came back, and is silent where nothing did', () => {
    const wrong = answer(1, { grade: 'wrong', mistake: 'sign-of-loss' });
    const twice = new Map([['a', [wrong, answer(2, { grade: 'wrong', mistake: 'sign-of-loss' })]]]);
    expect(part({ answers: twice })).toContain('What came back');
    expect(part({ answers: new Map([['a', [wrong]]]) })).not.toContain('What came back');
  });

  it.each(['refused', 'full', 'newer', 'changed', 'damaged'] as const)(
    'says why it is not noted: %s',
    (problem) => {
      expect(part({ problem })).toContain('Your answers could not be noted: ');
    },
  );
});

describe('a round that has not begun', () => {
  const round = (plan: Around['questions'] | undefined): string =>
    render(
      <Round book={book()} plan={plan} tally={{ due: 1, fresh: 2, resting: 3 }} standings={new Map()} />,
    );

  it('says how things stand and how many it would ask', () => {
    const text = words(round(allSittings.map(({ id, topic }) => ({ id, topic }))));
    expect(text).toContain('1 due today, 2 never asked, 3 resting.');
    expect(text).toContain('Begin with 4 questions');
  });

  it('says that rest is part of it where nothing is to be asked', () => {
    expect(words(round([]))).toContain('Nothing is due today');
    expect(round([])).not.toContain('<button');
  });

  it('offers nothing before it is known how things stand', () => {
    expect(round(undefined)).not.toContain('<button');
  });
});

describe('the controls of a question', () => {
  const fields = (
    sitting: (typeof allSittings)[number],
    change: { given?: Given; isDone?: boolean; problem?: string },
  ) =>
    render(
      <AnswerFields
        sitting={sitting}
        given={change.given ?? blankGiven(sitting.payload)}
        isDone={change.isDone ?? false}
        problem={change.problem}
        onGiven={nothing}
      />,
    );

  it('are of one group with the question as its name', () => {
    for (const sitting of allSittings) expect(fields(sitting, {})).toMatch(/^<fieldset[^>]*><legend>/);
  });

  it('take nothing more once the answer is marked', () => {
    expect(fields(choiceSitting, { isDone: true }).match(/<input[^>]*disabled/g)).toHaveLength(3);
    expect(fields(typedSitting, { isDone: true })).toMatch(/<input[^>]*readonly/i);
    expect(fields(orderSitting, { isDone: true }).match(/<button[^>]*disabled/g)).toHaveLength(6);
    expect(fields(placeSitting, { isDone: true }).match(/<input[^>]*disabled/g)).toHaveLength(2);
  });

  it('show what is chosen, and nothing else as chosen', () => {
    const chosen = fields(choiceSitting, { given: 'c' }).match(/<input[^>]*checked[^>]*>/g);
    expect(chosen).toHaveLength(1);
    expect(chosen?.[0]).toContain('value="c"');
  });

  it('tell where the question stands in its round, and how to answer it', () => {
    const html = render(
      <AnswerFields sitting={choiceSitting} given="" isDone={false} place="round-place" onGiven={nothing} />,
    );
    const [, place, how] = /<fieldset[^>]*aria-describedby="([^ "]+) ([^"]+)"/.exec(html) ?? [];
    expect(place).toBe('round-place');
    expect(html).toContain(`id="${how}">Choose one.`);
  });

  it('say the unit that is wanted in words, and show it in letters', () => {
    const html = fields(typedSitting, {});
    const [, id = ''] = /aria-describedby="([^"]+u)"/.exec(html) ?? [];
    expect(html).toContain(`id="${id}" class="visually-hidden">in decibel-milliwatts, within 0.1 decibels<`);
    expect(html).toMatch(/<span aria-hidden="true">dBm /);
    const payload = { ...typedSitting.payload, unit: 'none', within: 'within 1,5\u00a0%' };
    expect(fields({ ...typedSitting, payload } as typeof typedSitting, {}), 'a decimal comma too').toContain(
      'class="visually-hidden">within 1.5 percent<',
    );
  });

  it('keep what was typed, and mark it where it cannot be read', () => {
    const html = fields(typedSitting, { given: 'ten', problem: 'not a number' });
    expect(html).toContain('value="ten"');
    expect(html).toContain('aria-invalid="true"');
    expect(fields(typedSitting, { given: '10' })).not.toContain('aria-invalid');
  });

  it('list items in the order that they were put in', () => {
    const texts = words(fields(orderSitting, { given: ['three', 'two', 'one'] }));
    expect(texts).toMatch(/3 W.*2 W.*1 mW/);
  });
});

describe('a figure with places', () => {
  const figures: readonly Figure[] = [
    {
      figure: 'ruler',
      name: 'A ruler',
      unit: 'dBm',
      from: -10,
      to: 30,
      step: 5,
      marks: [
        { id: 'a', label: 'A', at: 0 },
        { id: 'b', label: 'B', at: 1 },
        { id: 'c', label: 'C', at: 27 },
      ],
    },
    {
      figure: 'wave',
      name: 'A sine',
      heights: [
        { id: 'peak', label: 'A', turns: 0.25, from: 0, to: 1 },
        { id: 'whole', label: 'B', turns: 1.25, from: -1, to: 1 },
      ],
    },
    {
      figure: 'chain',
      name: 'A chain',
      boxes: [
        { id: 'transmitter', label: 'Transmitter', note: '27 dBm' },
        { id: 'pad', label: 'Pad', note: '20 dB' },
      ],
    },
    {
      figure: 'zones',
      name: 'Readings and limits',
      unit: 'dBm',
      from: 24,
      to: 30,
      lower: 25.5,
      upper: 28.5,
      readings: [
        { id: 'in', label: 'A', at: 27, halfWidth: 0.4 },
        { id: 'edge', label: 'B', at: 28.4, halfWidth: 0.6 },
      ],
    },
  ];

  it.each(figures)('is drawn as it was looked at: $name', (figure) => {
    expect(
      render(<PlaceFigure name={figure.name} drawing={placeDrawing(figure, String)} chosen="" />).replaceAll(
        '><',
        '>\n<',
      ),
    ).toMatchSnapshot();
  });

  it('marks the chosen place, and no other', () => {
    for (const figure of figures) {
      const [first] = placesOf(figure);
      expect(
        render(
          <PlaceFigure name={figure.name} drawing={placeDrawing(figure, String)} chosen={first ?? ''} />,
        ).match(/place-chosen/g),
      ).toHaveLength(1);
      expect(
        render(<PlaceFigure name={figure.name} drawing={placeDrawing(figure, String)} chosen="" />),
      ).not.toContain('place-chosen');
    }
  });

  it('writes numbers with a minus and not with a hyphen', () => {
    const [figure] = figures;
    const { payload } = placeSitting;
    if (figure === undefined || payload.kind !== 'place') throw new Error('wish a figure');
    const { drawing } = shown({ ...placeSitting, payload: { ...payload, figure } });
    expect(drawing?.letters.map(({ text }) => text)).toContain('−10');
  });
});

describe('a paper on the table', () => {
  const wish = { seed: 7, length: 5, topics: '' };
  const paper: PaperState = {
    sittings: allSittings,
    given: new Map([[choiceSitting.id, 'a']]),
    begunMs: Date.now(),
    hasClock: true,
    handed: undefined,
  };
  const ways = { onTake: nothing, onApart: nothing, onGiven: nothing, onHandIn: nothing };
  const html = render(<PaperTable paper={paper} wish={wish} keeping="kept" {...ways} />);

  it('has every question at once, a clock in minutes, and what is still open', () => {
    for (const { stem } of allSittings) expect(html).toContain(stem);
    expect(words(html)).toContain('6 minutes left');
    expect(words(html)).toContain('3 questions without an answer.');
  });

  it('says what it was made of, so that it can be made again, and that it is kept', () => {
    expect(words(html)).toContain('Mock paper, number 7, 4 questions, all topics.');
    expect(words(html)).toContain('your answers and the clock are kept in this browser');
  });

  it('shows no answer and no mark before it is handed in', () => {
    expect(html).not.toContain('details');
    expect(words(html)).not.toMatch(/Right\.|Not right/);
  });

  it('has no clock unless one was wished for', () => {
    const calm = render(
      <PaperTable paper={{ ...paper, hasClock: false }} wish={wish} keeping="refused" {...ways} />,
    );
    expect(words(calm)).not.toContain('minute');
    expect(words(calm)).toContain('leave the page only after handing in');
  });

  it.each([
    ['kept', []],
    ['refused', []],
    ['changed', ['Show it as the other tab has it', 'Keep this one as a paper of its own']],
    ['gone', ['Keep this one as a paper of its own']],
  ] as const)('says how it is kept, and asks where another tab has it: %s', (keeping, buttons) => {
    const table = render(<PaperTable paper={paper} wish={wish} keeping={keeping} {...ways} />);
    const note = /<div class="screen-only">.*?<\/div>/.exec(table)?.[0] ?? '';
    expect([...note.matchAll(/<button[^>]*>([^<]*)/g)].map(([, text]) => text)).toEqual(buttons);
    const spoken = /<p class="[^"]*" role="status">(.*?)<\/p>/.exec(note)?.[1] ?? '';
    expect(spoken).toMatch(/kept|keeps/);
    expect(spoken, 'a sentence, without the names of buttons behind it').toMatch(/^[^<>]*\.$/);
  });

  it.each([
    [0, false],
    [1, true],
    [3, false],
    [60, true],
  ])('has its clock for a listener once: after %i minutes', (minutes, isSpoken) => {
    const begunMs = Date.now() - minutes * 60_000 - 1000;
    const table = render(<PaperTable paper={{ ...paper, begunMs }} wish={wish} keeping="kept" {...ways} />);
    const clock = /<p class="paper-clock screen-only"([^>]*)>([^<]*)<\/p><p[^>]*role="status">([^<]*)/.exec(
      table,
    );
    expect(clock?.[1]?.includes('aria-hidden="true"'), 'the shown one is passed over').toBe(isSpoken);
    expect(clock?.[3]).toBe(isSpoken ? clock?.[2] : '');
  });

  it('has groups of buttons that do not take each other’s choice', () => {
    const names = [...html.matchAll(/type="radio" name="([^"]+)"/g)].map(([, name]) => name);
    expect(new Set(names).size).toBe(2);
  });
});

describe('the settings of a paper', () => {
  const around: Around = {
    root: '/',
    lessons: {},
    questions: [],
    topics: [
      { id: 'ratios', title: 'Ratios', words: '' },
      { id: 'volts', title: 'Volts', words: '' },
    ],
  };
  const settings = (topics: string): string =>
    render(
      <AroundContext.Provider value={around}>
        <PaperFields seed={7} length={20} topics={topics} onChange={nothing} />
      </AroundContext.Provider>,
    );

  it('tick what was chosen, and nothing where all are meant', () => {
    expect(settings('').match(/checked/g)).toBeNull();
    expect(settings('volts').match(/<input[^>]*checked/g)).toHaveLength(1);
  });

  it('have a label for each field, and its limits', () => {
    const html = settings('');
    for (const [, id] of html.matchAll(/<label for="([^"]+)"/g)) expect(html).toContain(`id="${id}"`);
    expect(html).toContain('min="5" max="60"');
    expect(html).toContain('min="1" max="9999"');
  });
});

describe('a paper for a pencil', () => {
  it('has a box for each option and a line for each number', () => {
    const html = render(<PrintedPaper seed={3} topics={['Volts and watts']} sittings={allSittings} />);
    expect(html.match(/printed-line/g)).toHaveLength(1);
    expect(html.match(/<li>/g)).toHaveLength(3 + 3 + 2);
    expect(words(html)).toContain('Worksheets, number 3, 4 questions, topic: Volts and watts.');
  });
});

describe('small parts', () => {
  it('a lesson without a title is called by its name', () => {
    expect(render(<LessonLink id="decibels/new-one" />)).toBe(
      '<a href="/learn/decibels/new-one/">decibels/new-one</a>',
    );
  });

  it('the worked answer is folded until it is wanted', () => {
    expect(render(<Solution sitting={choiceSitting} />)).toMatch(/^<details class="answer">/);
    expect(render(<Solution sitting={choiceSitting} isOpen />)).toMatch(/^<details class="answer" open/);
  });

  it('what is fetched is told, and what cannot be has a way to try again', () => {
    expect(words(render(<Waiting isLost={false} retry={nothing} />))).toContain('is being fetched');
    expect(words(render(<Waiting isLost retry={nothing} />))).toMatch(/could not be fetched.*Try again/);
  });

  it('problems are a sentence each, in a part that is there before them', () => {
    expect(render(<Problems problems={[]} isLost={false} />)).toBe('<div role="status"></div>');
    expect(words(render(<Problems problems={['One.', 'Two.']} isLost />))).toMatch(/One\. Two\. .*could not/);
  });
});

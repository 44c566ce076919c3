import { describe, expect, it } from 'vitest';
import { progressStrings } from '../../src/practice/progress-strings.ts';
import { strings } from '../../src/practice/strings.ts';

/** Every finished sentence among some words, whatever their depth; those that are made from numbers are called by `made`. */
const sentencesIn = (words: unknown): readonly string[] => {
  if (typeof words === 'string') return [words];
  return typeof words === 'object' && words !== null ? Object.values(words).flatMap(sentencesIn) : [];
};

const made: readonly string[] = [
  strings.round.sum({ right: 0, asked: 9, unsure: 0 }),
  strings.round.tally({ due: 3, fresh: 0, resting: 1 }),
  strings.round.comesBack({ days: 1, inRound: false }),
  strings.round.comesBack({ days: 2, inRound: true }),
  strings.paper.marks({ right: 0, all: 20 }),
  strings.paper.left(1),
  progressStrings.count({ answers: 1, questions: 1 }),
];

describe('the words of practice', () => {
  const all = [...sentencesIn(strings), ...sentencesIn(progressStrings), ...made];

  it('neither praise nor shame nor count days in a row', () => {
    for (const sentence of all)
      expect(sentence).not.toMatch(
        /streak|well done|great|perfect|fail|lazy|forgot to|days in a row|!|\bscore\b/i,
      );
  });

  it('say that the questions are not official, and that law and syllabus differ', () => {
    expect(strings.notOfficial).toMatch(/not those of any examination/);
    expect(strings.notOfficial).toMatch(/differs from country to country/);
  });

  it('count one and several', () => {
    expect(strings.round.begin(1)).toBe('Begin with 1 question');
    expect(strings.round.begin(12)).toBe('Begin with 12 questions');
    expect(strings.paper.open(1)).toBe('1 question without an answer.');
    expect(strings.paper.open(0)).toBe('Every question has an answer.');
    expect(progressStrings.count({ answers: 1, questions: 1 })).toMatch(/^1 answer to 1 question,/);
    expect(progressStrings.count({ answers: 5, questions: 2 })).toMatch(/^5 answers to 2 questions,/);
    expect(progressStrings.unreadable(1)).toMatch(/^1 question has/);
    expect(progressStrings.unreadable(2)).toMatch(/^2 questions have/);
  });

  it('name the clauses of the syllabus, one or several', () => {
    expect(strings.question.syllabus(['1.9'])).toMatch(/: 1\.9\.$/);
    expect(strings.question.syllabus(['1.9', '8.1'])).toMatch(/: 1\.9 and 8\.1\.$/);
    expect(strings.question.syllabus(['1.9', '6.3', '8.1'])).toMatch(/: 1\.9, 6\.3 and 8\.1\.$/);
    expect(strings.question.difficulty(2)).toBe('Difficulty 2 of 3.');
  });

  it('count papers that are not handed in, and say what becomes of them', () => {
    expect(strings.paper.begun(1)).toMatch(/^A paper/);
    expect(strings.paper.begun(2)).toMatch(/^Papers/);
    expect(strings.paper.unreadable(1)).toMatch(/^1 paper of these .* It is left as it is/);
    expect(strings.paper.unreadable(2)).toMatch(/^2 papers of these .* They are left as they are/);
    expect(progressStrings.papers(1)).toMatch(/^1 mock paper is begun .* It goes/);
    expect(progressStrings.papers(3)).toMatch(/^3 mock papers are begun .* They go/);
    expect(progressStrings.papersHere(1)).toMatch(/stays as it is here\.$/);
    expect(progressStrings.papersHere(2)).toMatch(/stay as they are here\.$/);
  });

  it('say when a question comes back in words that a reader uses', () => {
    expect(strings.round.comesBack({ days: 0, inRound: false })).toBe('It comes back tomorrow.');
    expect(strings.round.comesBack({ days: 1, inRound: false })).toBe('It comes back tomorrow.');
    expect(strings.round.comesBack({ days: 9, inRound: false })).toBe('It comes back in 9 days.');
  });

  it('name what a paper was made of', () => {
    const made = { seed: 7, count: 10 };
    expect(strings.worksheet.again({ ...made, topics: [] })).toBe(
      'Worksheets, number 7, 10 questions, all topics.',
    );
    expect(strings.worksheet.again({ ...made, topics: ['Methods', 'Cautions'] })).toBe(
      'Worksheets, number 7, 10 questions, topics: Methods; Cautions.',
    );
  });

  it('say what is left on the clock of a paper, which may lie open in another tab', () => {
    expect(strings.paper.begunClock(1)).toBe('Its clock goes on with 1 minute left.');
    expect(strings.paper.begunClock(0)).toBe('The time on its clock is up.');
  });

  it('hurry nobody by seconds', () => {
    expect(strings.paper.left(12)).toBe('12 minutes left');
    expect(strings.paper.left(1)).toBe('The last minute');
  });

  it('tell of doubt only where there was some', () => {
    expect(strings.round.sum({ right: 3, asked: 4, unsure: 0 })).toBe('3 of 4 right at the first try.');
    expect(strings.round.sum({ right: 3, asked: 4, unsure: 2 })).toBe(
      '3 of 4 right at the first try, 2 of them unsure.',
    );
  });

  it('tell the keys that there are', () => {
    expect(strings.form.keys(4)).toBe('Keys: 1 to 4 choose, Enter checks and goes on.');
    expect(strings.form.keys(0)).not.toContain('choose');
  });

  it('have a sentence for each reason why nothing could be noted', () => {
    const reasons = Object.values(progressStrings.problems);
    expect(new Set(reasons).size).toBe(reasons.length);
    for (const reason of reasons)
      expect(`${progressStrings.notKept}${reason}`).toMatch(/^Your answers could not be noted: .*\.$/);
  });
});

import { render } from 'preact-render-to-string';
import { expect, it } from 'vitest';
import { questionOf } from '../../src/questions/index.ts';
import StageGuess from '../../src/stage/StageGuess.tsx';
import { saidText } from '../../src/text/said-text.ts';

const question = questionOf('chain-weakest-rung');
const html = render(<StageGuess question={question} />);
const text = html.replace(/<details[\s\S]*<\/details>/, '').replace(/<[^>]*>/g, ' ');

it('a question for the room has each option with a field for its hands', () => {
  for (const { text: option } of question.options) {
    expect(text).toContain(option);
    expect(html).toContain(`aria-label="Hands for: ${saidText(option)}"`);
  }
  expect(html.match(/<input/g)).toHaveLength(question.options.length);
});

it('neither tells nor marks the answer before it is asked for', () => {
  expect(html).toMatch(/<details class="answer"><summary>/);
  expect(html).not.toContain('hands-answer');
  expect(text).not.toContain('the answer');
});

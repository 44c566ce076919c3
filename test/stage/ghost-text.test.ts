import { describe, expect, it } from 'vitest';
import { ghostText } from '../../src/stage/ghost-text.ts';

const nb = '\u00a0';
const ghost = (before: string, now: string): string => ghostText(before, now, now, (text) => `was ${text}`);

describe('the ghost of an answer', () => {
  it('is the whole answer where the line has room for both', () => {
    expect(ghost(`22.99${nb}dBm`, `23.92${nb}dBm`)).toBe(`was 22.99${nb}dBm`);
  });

  it('is what has changed of it where it has not', () => {
    expect(ghost('The meter may show 1.34 to 1.69', 'The meter may show 1.40 to 1.69')).toBe('was 1.34');
    expect(ghost(`880${nb}mW on a meter that averages`, `924${nb}mW on a meter that averages`)).toBe(
      `was 880${nb}mW`,
    );
  });

  it('is how it began where it was built otherwise', () => {
    expect(ghost(`Can’t tell. 80.8${nb}% within.`, `Inside as agreed. 97.1${nb}% are within.`)).toBe(
      'was Can’t tell',
    );
  });

  it('never says what the answer before did not', () => {
    const [before, now] = [
      `±1.5${nb}dB; 95${nb}% within ±0.99${nb}dB`,
      `±1.6${nb}dB; 95${nb}% within ±1.1${nb}dB`,
    ];
    for (const word of ghost(before, now).replace('was ', '').split(' ')) expect(before).toContain(word);
  });
});

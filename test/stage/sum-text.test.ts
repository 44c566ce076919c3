import { describe, expect, it } from 'vitest';
import { examples } from '../../src/examples/index.ts';
import { sumText } from '../../src/stage/sum-text.ts';

describe('a sum on the wall', () => {
  it('has what its last sign of equality gives as its outcome', () => {
    expect(sumText('u = 2 dB + 1 dB = 3 dB')).toEqual({ how: 'u = 2 dB + 1 dB = ', outcome: '3 dB' });
  });

  it('without such a sign is an outcome by itself if it is short, else words', () => {
    expect(sumText('±0.96 dB about 27.10 dBm')).toEqual({ how: '', outcome: '±0.96 dB about 27.10 dBm' });
    expect(sumText('20 lg(1 ± 0.5) dB: +3.5/−6.0 dB')).toEqual({
      how: '20 lg(1 ± 0.5) dB: ',
      outcome: '+3.5/−6.0 dB',
    });
    const long = 'x'.repeat(76);
    expect(sumText(long)).toEqual({ how: long, outcome: '' });
    expect(sumText(`a = ${long}`)).toEqual({ how: `a = ${long}`, outcome: '' });
  });

  it('loses nothing in any worked example', () => {
    for (const { formula } of examples.flatMap((example) => example.steps())) {
      const { how, outcome } = sumText(formula('shown'));
      expect(how + outcome).toBe(formula('shown'));
    }
  });
});

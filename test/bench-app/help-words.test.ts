import { describe, expect, it } from 'vitest';
import { type HelpLink, helpOf, targetsOf } from '../../src/bench/help/help.ts';
import {
  changeWords,
  cheapestWords,
  helpLine,
  linkName,
  readingsWords,
  targetWords,
} from '../../src/bench/help/help-words.ts';
import { pointResult } from '../../src/bench/results/point-result.ts';
import { measurementOf } from '../../src/sheet/at-point.ts';
import { clubSheet } from '../../src/sheet/club.ts';

const sheet = clubSheet();
const padLink = (better: HelpLink['better']): HelpLink => ({ ids: ['pad'], share: 0.702, better });
const outcome = {
  expanded: 0.372,
  interval: { lower: 26.7, upper: 27.5 },
  verdict: 'inside',
  probabilityOfConformity: 1 + 1e-15,
} as const;
const found = { link: ['pad'], perfect: outcome, halved: outcome, replaced: undefined };

describe('what would help, in words', () => {
  it('names a link by its own words, several of one cause together', () => {
    expect(linkName(sheet, ['pad'])).toBe('20 dB pad');
    expect(linkName(sheet, ['pad', 'coax'])).toBe(
      '20 dB pad + 3 m of thin coax (together, by a shared cause)',
    );
    expect(linkName(sheet, ['readings'])).toBe('Scatter of the readings');
  });

  it('gives U, verdict and probability of a change, a share a last bit above one included', () => {
    expect(changeWords('ascii', outcome)).toEqual({
      expanded: '+/-0.37 dB',
      verdict: 'inside',
      probability: 'conforms: more than 99.9 %',
    });
    expect(changeWords('ascii', { ...outcome, probabilityOfConformity: undefined }).probability).toBe('');
  });

  it('leaves open what is not computed yet, and says what cannot be', () => {
    expect(helpLine('ascii', { sheet, link: padLink('none'), found: undefined })).toEqual({
      key: 'pad',
      label: '20 dB pad',
      share: '70 %',
      perfect: undefined,
      halved: undefined,
      replaced: '',
    });
    expect(helpLine('ascii', { sheet, link: padLink('stated'), found: undefined }).replaced).toBe(undefined);
    expect(helpLine('ascii', { sheet, link: padLink('unusable'), found }).replaced).toBe(
      'amount cannot be used',
    );
  });

  it('says the cheapest change with an amount that is never too large', () => {
    const change = { kind: 'change', link: ['pad'], factor: 0.619, verdict: 'inside' } as const;
    const told = cheapestWords('ascii', sheet, change);
    expect(told).toContain('20 dB pad: brought down to 61 % of what it may be wrong by now');
    // 61 % of 0.5 dB is 0.305: rounded down
    expect(told).toMatch(/That is \+\/-0\.30? dB, limits\.$/);
    expect(cheapestWords('ascii', sheet, { ...change, factor: 0.001 })).toContain('all but perfect');
    expect(cheapestWords('ascii', sheet, { ...change, link: ['pad', 'coax'] })).not.toContain('That is');
    expect(cheapestWords('ascii', sheet, { kind: 'none' })).toMatch(/^No single link/);
    expect(cheapestWords('ascii', sheet, { kind: 'decided', verdict: 'outside' })).toContain(': outside.');
  });

  it('says whether readings pay', () => {
    const more = { count: 3, scatterDb: 0.5, pay: 21 };
    expect(readingsWords('ascii', more)).toMatch(
      /^3 readings with a scatter of 0\.500 dB each: up to 21 in all/,
    );
    expect(readingsWords('ascii', { ...more, count: 1, pay: 1 })).toMatch(
      /^1 reading .* less than a twentieth\.$/,
    );
    expect(readingsWords('ascii', { ...more, pay: undefined })).toContain('every further reading pays');
    expect(readingsWords('ascii', undefined)).toContain('Nothing is known');
  });

  it('says how sure it would have to be', () => {
    const measurement = measurementOf(sheet);
    const shown = pointResult(measurement, 'point1');
    if (!shown.inRange) throw new Error(shown.reason.code);
    // 27.1 dBm: 1.4 dB to the upper limit of 28.5 dBm
    expect(targetWords('ascii', targetsOf(shown), 0.69)).toEqual([
      'U is +/-0.69 dB now.',
      expect.stringContaining('U must be +/-1.4 dB or better for the verdict'),
      expect.stringContaining('ask for U of +/-0.50 dB'),
    ]);
    const onLimit = { verdict: { expanded: 0, verdict: 'inside' }, specificationDb: undefined } as const;
    expect(targetWords('ascii', onLimit, 0.69)[1]).toContain('on a limit');
    expect(targetWords('ascii', { verdict: undefined, specificationDb: undefined }, 0.69)[1]).toContain(
      'Simple',
    );
    expect(helpOf(shown, []).links.length).toBe(sheet.links.length);
  });
});

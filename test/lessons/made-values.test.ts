import { describe, expect, it } from 'vitest';
import { DEFINITION_EVENTS } from '#compute';
import { definitionWords } from '../../src/lessons/definition-dates.ts';
import { madeValues } from '../../src/lessons/values/what-a-watt-is-made-of.ts';
import { definedText } from '../../src/lessons/words.ts';

const values = madeValues();
const value = (name: string): string =>
  (values[name]?.() ?? '').replaceAll(/(?<=\d)\u00a0(?=\d)/g, '').replaceAll('\u00a0', ' ');
/** SI Brochure, 9th edition, 2.2. */
const [h, e, caesium] = [6.62607015e-34, 1.602176634e-19, 9192631770];

describe('numbers of the lesson on the watt', () => {
  it('come down to h, e and the caesium frequency, by hand', () => {
    expect(value('watt')).toBe(`1 W ≈ ${(1 / (h * caesium ** 2) / 1e13).toFixed(7)} × 10¹³ h Δν²`);
    expect(value('volt')).toBe(`1 V ≈ ${(e / (h * caesium)).toFixed(3)} h Δν e⁻¹`);
    expect(value('ohm')).toBe(`1 Ω ≈ ${((1e5 * e ** 2) / h).toFixed(7)} × 10⁻⁵ h e⁻²`);
    expect(value('ampere')).toBe(`1 A ≈ ${(1 / (e * caesium) / 1e8).toFixed(7)} × 10⁸ e Δν`);
    expect(value('quanta')).toBe('1.786 × 10¹³');
  });

  it('are those of the direct current that heats as 27 dBm does, by hand', () => {
    const watts = 10 ** -0.3;
    const amperes = (level: number): number => Math.sqrt(10 ** ((level - 30) / 10) / 50);
    expect(value('power')).toBe(`${(1000 * watts).toFixed(0)} mW`);
    expect(value('volts')).toBe(`${Math.sqrt(watts * 50).toFixed(2)} V`);
    expect(value('current')).toBe(`${(1000 * amperes(27)).toFixed(0)} mA`);
    const charges = (level: number): string => (amperes(level) / e / 1e17).toFixed(2);
    expect(value('charges')).toBe(`${charges(27)} (${charges(26.31)} to ${charges(27.69)}) × 10¹⁷`);
    expect(value('crest')).toMatch(
      new RegExp(`^${((Math.SQRT2 * amperes(27)) / e / 1e17).toFixed(2)} \\(.*\\) × 10¹⁷`),
    );
    expect(value('claimed')).toContain(`${(amperes(27) / e / 1e17).toFixed(9)} × 10¹⁷ claimed`);
  });

  it('count periods, light, junctions and fractions of R_K, by hand', () => {
    expect(value('periods')).toBe('9192631770');
    expect(value('lightTime')).toBe(`${(1e9 / 299792458).toFixed(3)} ns`);
    expect(value('josephson')).toBe(`${((2 * e) / h / 1e9).toFixed(1)} GHz`);
    const junctions = (Math.sqrt(50 * 10 ** -0.3) * 2 * e) / h / 70e9;
    expect(value('junctions')).toBe(String(100 * Math.round(junctions / 100)));
    expect(value('hall')).toBe('25812.807 Ω');
    expect(value('ofHall')).toBe((h / e ** 2 / 50).toFixed(1));
  });

  it('have the change of 2019 in parts per million (SI Brochure, Appendix 2) and in decibels', () => {
    expect(value('voltChange')).toBe('0.107 ppm');
    expect(value('ohmChange')).toBe('0.018 ppm');
    expect(value('wattChange')).toBe('0.196 ppm');
    expect(value('wattChangeDb')).toBe(`${((10 * 1.955365) / Math.LN10).toFixed(1)} × 10⁻⁷ dB`);
    expect(value('olderInch')).toBe('2.0 ppm');
  });

  it('show how the speed of light cancels', () => {
    expect(value('cancels')).toBe('its powers on the way down are \u22122, +1 and +1, together nothing');
  });
});

describe('dates of definitions', () => {
  const told = DEFINITION_EVENTS.map((event) =>
    `${event.year} ${event.unit}: ${definitionWords(event)}`.replaceAll('\u00a0', ' '),
  );

  it('have the numbers of the SI Brochure (Appendix 4) and of the addendum to NBS Circular 572', () => {
    expect(told).toContain('1960 metre: 1 650 763.73 wavelengths of an orange line of krypton-86');
    expect(told).toContain('1967 second: 9 192 631 770 periods of the caesium transition');
    expect(told).toContain('1983 metre: the way of light in a second over 299 792 458');
    expect(told).toContain('1959 inch: 25.4 mm exactly, as national laboratories agreed');
    expect(told.at(-2)).toContain('2019 kilogram');
    expect(told.at(-2)).toContain('6.626 070 15 × 10⁻³⁴ in J s');
    expect(told.at(-1)).toContain('2019 ampere');
    expect(told.at(-1)).toContain('1.602 176 634 × 10⁻¹⁹ in C');
    expect(told.find((text) => text.startsWith('1948'))).toContain('with 2 × 10⁻⁷ newtons on each metre');
  });

  it('say what is from memory, and nothing twice', () => {
    expect(told.filter((text) => text.endsWith('(from memory)'))).toHaveLength(4);
    expect(new Set(told).size).toBe(told.length);
    expect(told.join()).not.toMatch(/NaN|undefined/);
  });
});

it('words of units say in which document they stand', () => {
  expect(definedText({ in: 'siBrochure', entry: '2.2', checked: true })).toBe('SI Brochure, 9th edition 2.2');
  expect(definedText({ in: 'siBrochure', entry: '2.3.2' })).toBe(
    'SI Brochure, 9th edition 2.3.2 (number from memory)',
  );
});

import { describe, expect, it } from 'vitest';
import {
  agreementText,
  computedText,
  headingOf,
  printedText,
  relativeText,
  toleranceReasons,
  unitAfter,
} from '../../src/checks/cells.ts';
import type { Figure } from '../../src/checks/check.ts';

const figure = (printed: string, computed: number, more: Partial<Figure> = {}): Figure => ({
  what: 'invented',
  printed,
  unit: '',
  compute: () => computed,
  ...more,
});

describe('a figure on the page', () => {
  it('shows two digits more than print, so that a reader sees how it rounds', () => {
    expect(computedText(figure('6.31', 6.313752))).toBe('6.3138');
    expect(computedText(figure('32', 31.6578))).toBe('31.66');
    expect(computedText(figure('-3.92', -3.919928))).toBe('−3.9199');
  });

  it('shows no more digits than a double bears', () => {
    expect(computedText(figure('1.7320508075688772', 3 ** 0.5))).toBe('1.732050807568877');
  });

  it('shows as many digits as it takes to see why print differs', () => {
    const differs = { exact: '95.44997', because: 'invented' };
    expect(computedText(figure('95.5', 95.449974, { differs }))).toBe('95.44997');
    expect(computedText(figure('1.70', 1.68957, { differs: { exact: '1.7', because: 'invented' } }))).toBe(
      '1.6896',
    );
  });

  it('shows three digits of what only has to stay below a bound', () => {
    expect(computedText(figure('< 0.0001', 9.8659e-8))).toBe('0.0000000987');
    expect(computedText(figure('< 2.5', 2.275))).toBe('2.28');
  });

  it('begins a heading with a capital letter', () => {
    expect(headingOf('halving the power takes 3 dB')).toBe('Halving the power takes 3 dB');
    expect(headingOf('50 µV in 50 Ω')).toBe('50 µV in 50 Ω');
  });

  it('prints a true minus sign', () => {
    expect(printedText(figure('-19.9', -19.9))).toBe('−19.9');
  });

  it('puts a unit after its number with a no-break space, and a power of ten after a multiplication sign', () => {
    expect(unitAfter(figure('1', 1, { unit: 'mV' }))).toBe('\u00a0mV');
    expect(unitAfter(figure('1', 1, { unit: '10⁻⁹' }))).toBe('\u00a0×\u00a010⁻⁹');
    expect(unitAfter(figure('1', 1))).toBe('');
  });

  it('tells agreement, a bound kept, a tolerance, a known difference and a failure apart', () => {
    expect(agreementText(figure('1.0', 1.04))).toBe('agrees');
    expect(agreementText(figure('< 1.0', 0.9))).toBe('is below');
    expect(agreementText(figure('1.0', 1.2))).toBe('does not agree');
    const differs = { exact: '1.2', because: 'invented' };
    expect(agreementText(figure('1.0', 1.2, { differs }))).toBe('differs, explained');
    const tolerance = { within: 0.003, because: 'noise' };
    expect(agreementText(figure('1.000', 1.002, { tolerance }))).toBe('agrees within 0.003');
    const tiny = { within: 1e-14, because: 'bits' };
    expect(agreementText(figure('1.000', 1, { tolerance: tiny }))).toBe('agrees within 10⁻¹⁴');
    const odd = { within: 3e-12, because: 'bits' };
    expect(agreementText(figure('1.000', 1, { tolerance: odd }))).toBe('agrees within 10⁻¹¹');
  });

  it('tells a relative difference by its power of ten', () => {
    expect(relativeText(3.42e-11)).toBe('3.4 × 10⁻¹¹');
    expect(relativeText(0.25)).toBe('2.5 × 10⁻¹');
    expect(relativeText(1.5)).toBe('1.5 × 10⁰');
    expect(relativeText(0)).toBe('0');
  });

  it('gives each reason for a tolerance once', () => {
    const tolerance = { within: 0.003, because: 'noise' };
    const figures = [figure('1', 1, { tolerance }), figure('2', 2, { tolerance }), figure('3', 3)];
    expect(toleranceReasons(figures)).toEqual(['noise']);
  });
});

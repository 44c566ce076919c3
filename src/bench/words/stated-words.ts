import { levelDbm, levelToPower, statedResult } from '#compute';
import { plusMinusText } from '../../text/deviation-text.ts';
import { intervalText } from '../../text/interval-text.ts';
import { decimalsFor } from '../../text/place.ts';
import { powerUnitFor } from '../../text/power-units.ts';
import { coverageText, shareText } from '../../text/probability-text.ts';
import { changeText, dbText, levelText, numberText, quantityText } from '../../text/quantity-text.ts';
import { type Style, signsOf } from '../../text/style.ts';
import type { BenchResult } from '../results/result.ts';
import { freedomText } from './budget.ts';
import { wattsIntervalText } from './result-words.ts';
import { statedStrings as strings } from './stated-strings.ts';

/** From here on Student's t is a bell for every purpose, and its degrees of freedom tell nothing. */
const TELLING_FREEDOM = 1000;

/** A result in one of the forms in which results are stated. */
export interface StatedForm {
  readonly key: keyof typeof strings.names;
  readonly name: string;
  readonly text: string;
}

/** The result in the standard forms, dBm first; a result without any uncertainty in one alone. */
export function statedForms(style: Style, result: BenchResult): readonly StatedForm[] {
  const { estimate, propagation } = result.chain.result;
  const form = (key: StatedForm['key'], text: string): StatedForm => ({
    key,
    name: strings.names[key],
    text,
  });
  if (propagation.standardUncertainty === 0)
    return [
      form('expanded', strings.exact({ value: levelText(style, { levelDbm: estimate, decimals: 2 }) })),
    ];
  const whole = wholeForm(style, result);
  return [
    ...standardForms(style, result).map(({ key, text }) => form(key, text)),
    form('expanded', expandedForm(style, result)),
    form('watts', wattsForm(style, result)),
    ...(whole === undefined ? [] : [form('whole', whole)]),
  ];
}

const symmetricAbout = (estimate: number, half: number) =>
  statedResult({ estimate, interval: { lower: estimate - half, upper: estimate + half } });

const placesOf = (place: number | undefined): number => -(place ?? 0);

function standardForms(style: Style, { chain: { result } }: BenchResult) {
  const { estimate, plus, place } = symmetricAbout(result.estimate, result.propagation.standardUncertainty);
  const decimals = placesOf(place);
  const value = numberText(style, { value: estimate, decimals });
  const u = numberText(style, { value: plus, decimals });
  // The bracket holds the uncertainty in units of the last digit: 0.34 beside 27.10 is 34, 3.4 beside 27.1 is 34 as well.
  const digits = decimals > 0 ? String(Math.round(plus * 10 ** decimals)) : u;
  return [
    {
      key: 'withStandard' as const,
      text: strings.withStandard({
        value: levelText(style, { levelDbm: estimate, decimals }),
        u: dbText(style, { db: plus, decimals }),
      }),
    },
    { key: 'digits' as const, text: strings.digits({ value: `${value}(${digits})`, unit: 'dBm' }) },
    { key: 'brackets' as const, text: strings.brackets({ value: `${value}(${u})`, unit: 'dBm' }) },
  ];
}

const coverageOf = (style: Style, { chain: { result } }: BenchResult): string => {
  const { coverageFactor: factor, coverageProbability: probability } = result.propagation;
  return coverageText(style, { factor, probability });
};

function expandedForm(style: Style, result: BenchResult): string {
  const { estimate, propagation } = result.chain.result;
  const { expanded, standardUncertainty: u, degreesOfFreedom } = propagation;
  const stated = symmetricAbout(estimate, expanded);
  const decimals = placesOf(stated.place);
  const half = plusMinusText(style, { halfWidth: stated.plus, decimals, unit: 'dB' });
  return strings.expanded({
    value: `${levelText(style, { levelDbm: stated.estimate, decimals })} ${half}`,
    u: dbText(style, { db: u, decimals: decimalsFor(u) }),
    coverage: coverageOf(style, result),
    freedom:
      degreesOfFreedom < TELLING_FREEDOM
        ? strings.freedomOf(freedomText(style, Math.floor(degreesOfFreedom)))
        : '',
  });
}

/** In watts the two sides differ; they are cut to one place, the larger with two digits. */
function wattsForm(style: Style, result: BenchResult): string {
  const { estimate, propagation } = result.chain.result;
  const power = levelToPower(levelDbm(estimate));
  const { unit, watts } = powerUnitFor(power);
  const inUnit = (level: number): number => levelToPower(levelDbm(level)) / watts;
  const { lower, upper } = propagation.interval;
  const stated = statedResult({
    estimate: power / watts,
    interval: { lower: inUnit(lower), upper: inUnit(upper) },
  });
  const decimals = placesOf(stated.place);
  const value = quantityText(style, { value: stated.estimate, decimals, unit });
  // Never one plus-minus in watts, even where both sides round to the same.
  const up = changeText(style, { value: stated.plus, decimals, unit: 'none' });
  const down = changeText(style, { value: -stated.minus, decimals, unit });
  return strings.watts({
    value: `${value}, ${up}${signsOf(style).between}${down}`,
    interval: wattsIntervalText(style, { lower, upper }),
    coverage: coverageOf(style, result),
  });
}

function wholeForm(style: Style, { chain: { result } }: BenchResult): string | undefined {
  const { whole, propagation, estimate } = result;
  if (!('symmetric' in whole)) return undefined;
  const { lower, upper } = whole.symmetric;
  const u = whole.standardDeviation;
  if (u === undefined || !(upper > lower)) return undefined;
  const decimals = decimalsFor(Math.max(estimate - lower, upper - estimate));
  return strings.whole({
    value: levelText(style, { levelDbm: whole.mean ?? estimate, decimals }),
    u: dbText(style, { db: u, decimals: decimalsFor(u) }),
    interval: intervalText(style, { lower, upper, decimals, unit: 'dBm' }),
    share: shareText(style, propagation.coverageProbability),
  });
}

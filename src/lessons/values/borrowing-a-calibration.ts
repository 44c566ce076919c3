import {
  borrowedLine,
  CLUB_READINGS,
  clubBorrowed,
  correctionFor,
  INFLUENCES,
  laterResult,
  lenderExpanded,
  placesOf,
  readingsAlone,
} from '../../sheet/borrowed.ts';
import { thermometerAt, withoutCovariance } from '../../sheet/thermometer.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { changeText, levelText, numberText, quantityText } from '../../text/quantity-text.ts';

/** Numbers of the lesson on borrowed calibrations, all from the club's evening with a lent meter. */
export function borrowedValues(): Readonly<Record<string, () => string>> {
  const of = clubBorrowed();
  const later = laterResult(of);
  const { lower, upper } = borrowedLine().range;
  const [first = [], second = []] = CLUB_READINGS;
  const [before = 0, own = 0, after = 0] = first.map(Number);
  const degrees = (value: number): string => quantityText('shown', { value, decimals: 4, unit: 'degC' });
  return {
    before: () => level(before, 2),
    own: () => level(own, 2),
    after: () => level(after, 2),
    round: () => change((before + after) / 2 - own),
    oneSided: () => change(before - own),
    rounds: () => numberText('shown', { value: (second.length - 1) / 2, decimals: 0 }),
    places: () => numberText('shown', { value: CLUB_READINGS.length, decimals: 0 }),
    lowest: () => change(placesOf()[0]?.correction ?? Number.NaN),
    highest: () => change(placesOf().at(-1)?.correction ?? Number.NaN),
    shown: () => level(of.readingDbm, 1),
    correction: () => `${change(correctionFor(of).estimate)} ${band(correctionFor(of).expanded)}`,
    alone: () => band(readingsAlone(of).expanded),
    whole: () => band(correctionFor(of).expanded),
    floor: () => band(lenderExpanded(of)),
    readOff: () => band(INFLUENCES.resolution),
    within: () => band(INFLUENCES.mismatch),
    lender: () => plusMinusText('shown', { halfWidth: of.lender, decimals: 2, unit: 'dB' }),
    later: () => `${level(later.estimate, 2)} ${band(later.expanded)}`,
    laterBand: () => band(later.expanded),
    year: () => band(laterResult({ ...of, months: 12 }).expanded),
    twoYears: () => band(laterResult({ ...of, months: 24 }).expanded),
    lowEnd: () => level(lower, 1),
    highEnd: () => level(upper, 1),
    averaged: () =>
      `${band(correctionFor({ ...of, shared: 'averaged' }).expanded)} claimed where ${band(correctionFor(of).expanded)} is due`,
    beyond: () => 'no number at all: nobody compared the two up there',
    stale: () =>
      `${band(later.expanded)} claimed where ${band(laterResult({ ...of, months: 36 }).expanded)} is due, three years later`,
    atThirty: () => degrees(thermometerAt(30, 20).value),
    uAtThirty: () => degrees(thermometerAt(30, 20).standardUncertainty),
    uApart: () => degrees(withoutCovariance(30, 20)),
  };
}

const level = (levelDbm: number, decimals: number): string => levelText('shown', { levelDbm, decimals });
const change = (value: number): string => changeText('shown', { value, decimals: 2, unit: 'dB' });
const band = (halfWidth: number): string => plusMinusText('shown', { halfWidth, decimals: 2, unit: 'dB' });

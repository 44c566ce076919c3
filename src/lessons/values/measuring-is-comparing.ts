import { expansionUm } from '#compute';
import { claimOf, clubFrame, longestThatFitsMm, misfitMm, type TwoRules } from '../../sheet/two-rules.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { decimalsFor } from '../../text/place.ts';
import { changeText, quantityText } from '../../text/quantity-text.ts';

const SHORT_MM = 300;
const LONG_MM = 1500;
const METRE_MM = 1000;
const UM_PER_MM = 1000;
/** Linear expansion of steel per kelvin, as of gauge blocks (ISO 3650 gives 11.5e-6 within 1e-6). */
const STEEL_PER_K = 11.5e-6;

/** Numbers of the lesson on comparing, all from the club's frame. */
export function rulesValues(): Readonly<Record<string, () => string>> {
  const frame = clubFrame();
  const long = { ...frame, lengthMm: LONG_MM };
  const both = { ...long, firstPercent: frame.secondPercent };
  const { firstPercent, secondPercent } = frame;
  const offAt = (lengthMm: number, percent: number): string => change((lengthMm * percent) / 100, 1);
  return {
    misfitShort: () => length(misfitMm({ ...frame, lengthMm: SHORT_MM }), 1),
    misfitLong: () => length(misfitMm(long), 1),
    longest: () => length(longestThatFitsMm(frame), 0),
    firstPerMetre: () => offAt(METRE_MM, firstPercent),
    secondPerMetre: () => offAt(METRE_MM, secondPercent),
    claim: () => claim(long),
    claimTenth: () => claim({ ...long, stepMm: 0.1 }),
    claimPromise: () => claim({ ...long, known: 'promise' }),
    claimCompared: () => claim({ ...long, known: 'compared', stepMm: 0.1 }),
    warmRule: () =>
      length(
        expansionUm({ lengthMm: METRE_MM, expansionPerK: STEEL_PER_K, temperatureC: 30 }) / UM_PER_MM,
        3,
      ),
    finerMarks: () => `${claim({ ...long, stepMm: 0.1 })} claimed, ${length(misfitMm(long), 1)} there`,
    bothLong: () =>
      `a misfit of ${length(misfitMm(both), 1)}, and every part ${length((-LONG_MM * secondPercent) / 100, 1)} too long`,
    promiseTaken: () =>
      `${claim({ ...long, known: 'promise' })} to be allowed for where ${length(misfitMm(long), 1)} is there`,
  };
}

const length = (value: number, decimals: number): string =>
  quantityText('shown', { value, decimals, unit: 'mm' });

const change = (value: number, decimals: number): string =>
  changeText('shown', { value, decimals, unit: 'mm' });

function claim(rules: TwoRules): string {
  const { expanded } = claimOf(rules).propagation;
  return plusMinusText('shown', { halfWidth: expanded, decimals: decimalsFor(expanded), unit: 'mm' });
}

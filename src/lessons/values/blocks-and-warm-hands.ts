import { expansionUm, type Interval, remainingDifferenceK } from '#compute';
import { wholeClaimOf } from '../../sheet/evaluated-blocks.ts';
import {
  CERTIFICATE_UM,
  type Comparison,
  claimOf,
  clubBlocks,
  differenceUm,
  endsOf,
  FILM_UM,
  NOMINAL_MM,
  STEEL_PPM,
} from '../../sheet/gauge-blocks.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { decimalsFor } from '../../text/place.ts';
import { changeText, quantityText } from '../../text/quantity-text.ts';

/** What the club found by trial: after so many minutes on the plate 1/e of a difference of temperature is left. Invented. */
const TIME_CONSTANT_MINUTES = 10;
const ALUMINIUM_PPM = 23.1;
const FOURTH_UM = 0.1;

/** Numbers of the lesson on gauge blocks, all from the club's comparison. */
export function blocksValues(): Readonly<Record<string, () => string>> {
  const club = clubBlocks();
  const calm = { ...club, stackC: 20 };
  const four = { ...calm, deviationsUm: [...club.deviationsUm, FOURTH_UM] };
  const off = { ...four, offUm: 0.08 };
  const both = { ...club, stackC: 23, singleC: 23 };
  const grade: Comparison = { ...calm, known: 'grade' };
  const hot = { ...club, stackC: 24 };
  const nominal: Comparison = { ...four, known: 'nominal' };
  return {
    shown: () => change(differenceUm(club)),
    expected: () => claim(club),
    certificate: () => band(CERTIFICATE_UM),
    stackDeviation: () => change(endsOf(calm).stack.end),
    blockSum: () => change(endsOf(calm).stack.end - 2 * FILM_UM),
    singleDeviation: () => change(endsOf(calm).single.end),
    film: () => length(FILM_UM),
    films: () => length(2 * FILM_UM),
    perKelvin: () => length(grown(1)),
    warmth: () => length(grown(club.stackC - club.singleC)),
    afterTen: () => length(left(10)),
    afterHalfHour: () => length(left(30)),
    afterHour: () => quantityText('shown', { value: left(60), decimals: 3, unit: 'um' }),
    counted: () => claim({ ...club, counted: 'each' }),
    bothGrown: () => length(grown(3)),
    bothShown: () => change(differenceUm(both)),
    onePpm: () => length(expansionUm({ lengthMm: NOMINAL_MM, expansionPerK: 1e-6, temperatureC: 23 })),
    aluminium: () => change(differenceUm({ ...both, singlePpm: ALUMINIUM_PPM })),
    gradeRoots: () => half(claimOf(grade).propagation.interval),
    gradeWorst: () => half(claimOf(grade).worstCase.interval),
    gradeWhole: () => half(wholeClaimOf(grade).interval),
    ownThree: () => band(expandedOf(calm)),
    ownFour: () => band(expandedOf(four)),
    sharedFour: () => band(expandedOf({ ...four, known: 'shared' })),
    offShown: () => change(differenceUm(off)),
    hands: () => `${claim(hot)} claimed, ${change(differenceUm(hot))} shown`,
    nominal: () => `${claim(nominal)} claimed, ${change(differenceUm(nominal))} shown`,
    sharedAsOwn: () => `${claim(off)} claimed, ${change(differenceUm(off))} shown`,
  };
}

const length = (value: number): string => quantityText('shown', { value, decimals: 2, unit: 'um' });
const change = (value: number): string => changeText('shown', { value, decimals: 2, unit: 'um' });

/** How much longer 100 mm of steel are for so many kelvin. */
const grown = (warmerK: number): number =>
  expansionUm({ lengthMm: NOMINAL_MM, expansionPerK: STEEL_PPM * 1e-6, temperatureC: 20 + warmerK });

/** What is left of the warmth of hands after a time on the plate, as a length. */
function left(minutes: number): number {
  const { stackC, singleC } = clubBlocks();
  const differenceK = stackC - singleC;
  return grown(remainingDifferenceK({ differenceK, minutes, timeConstantMinutes: TIME_CONSTANT_MINUTES }));
}

const expandedOf = (of: Comparison): number => claimOf(of).propagation.expanded;

const band = (halfWidth: number): string =>
  plusMinusText('shown', { halfWidth, decimals: decimalsFor(halfWidth), unit: 'um' });

/** Half of an interval, to hundredths, so that three ways to add up can be told apart. */
const half = ({ lower, upper }: Interval): string =>
  plusMinusText('shown', { halfWidth: (upper - lower) / 2, decimals: 2, unit: 'um' });

function claim(of: Comparison): string {
  const { estimate, propagation } = claimOf(of);
  const decimals = decimalsFor(propagation.expanded);
  return `${changeText('shown', { value: estimate, decimals, unit: 'none' })} ${band(propagation.expanded)}`;
}

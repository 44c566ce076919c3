import {
  caesiumPeriods,
  changeOf2019,
  inchInMillimetres,
  josephsonConstantHzPerV,
  lightTimeS,
  numberOfConstants,
  powerRatioToDb,
  vonKlitzingOhm,
} from '#compute';
import { clubCurrent, directCurrent } from '../../sheet/counted-charges.ts';
import { powersMet, type RootUnit } from '../../sheet/unit-tree.ts';
import { groupedText, powerOfTenText } from '../../text/power-of-ten-text.ts';
import { powerText } from '../../text/power-text.ts';
import { changeText, numberText, quantityText } from '../../text/quantity-text.ts';
import { constantText } from '../../widgets/unit-tree/product.ts';
import { bandedText, rootText } from '../../widgets/unit-tree/words.ts';

/** Frequency at which junctions are commonly driven, in Hz (from memory). */
const DRIVE_HZ = 70e9;

/** A fraction as parts per million. */
const ppm = (fraction: number, decimals = 3): string =>
  quantityText('shown', { value: 1e6 * fraction, decimals, unit: 'ppm' });

/** A number with its digits in groups of three: 483 597.8. */
const grouped = (value: number, decimals: number): string =>
  groupedText('shown', numberText('shown', { value, decimals }));

/** A count to three digits, written out: 34 600. */
const rounded = (count: number): string => groupedText('shown', String(Number(count.toPrecision(3))));

/** Numbers of the lesson on what a watt is made of. */
export function madeValues(): Readonly<Record<string, () => string>> {
  const own = directCurrent(clubCurrent());
  const crest = directCurrent({ ...clubCurrent(), counted: 'crest' });
  const claimed = directCurrent({ ...clubCurrent(), halfDb: 0 });
  const change = changeOf2019();
  const unit = (root: RootUnit) => (): string => rootText('shown', root);
  return {
    watt: unit('watt'),
    volt: unit('volt'),
    ohm: unit('ohm'),
    ampere: unit('ampere'),
    caesium: () => constantText('shown', 'caesiumFrequency'),
    light: () => constantText('shown', 'lightSpeed'),
    planck: () => constantText('shown', 'planck'),
    charge: () => constantText('shown', 'elementaryCharge'),
    quanta: () => powerOfTenText('shown', { value: numberOfConstants('watt'), digits: 4 }),
    power: () => powerText('shown', { powerW: own.powerW.value, digits: 3 }),
    volts: () => quantityText('shown', { value: own.volts.value, decimals: 2, unit: 'V' }),
    current: () => quantityText('shown', { value: 1000 * own.amperes.value, decimals: 0, unit: 'mA' }),
    charges: () => bandedText('shown', own.charges),
    periods: () => groupedText('shown', String(caesiumPeriods(1))),
    lightTime: () => quantityText('shown', { value: 1e9 * lightTimeS(1), decimals: 3, unit: 'ns' }),
    josephson: () => `${grouped(josephsonConstantHzPerV() / 1e9, 1)}\u00a0GHz`,
    junctions: () => rounded((josephsonConstantHzPerV() * own.volts.value) / DRIVE_HZ),
    hall: () => `${grouped(vonKlitzingOhm(), 3)}\u00a0Ω`,
    ofHall: () => powerOfTenText('shown', { value: vonKlitzingOhm() / clubCurrent().loadOhm, digits: 4 }),
    voltChange: () => ppm(change.volt),
    ohmChange: () => ppm(change.ohm),
    wattChange: () => ppm(change.watt),
    wattChangeDb: () =>
      `${powerOfTenText('shown', { value: powerRatioToDb(1 + change.watt), digits: 2 })}\u00a0dB`,
    olderInch: () => ppm(inchInMillimetres('us1893') / inchInMillimetres('international1959') - 1, 1),
    crest: () =>
      `${bandedText('shown', crest.charges)}, and a direct current of that size would heat the load with ${powerText('shown', { powerW: crest.countedW, digits: 3 })}`,
    claimed: () =>
      `${bandedText('shown', claimed.charges)} claimed where ${bandedText('shown', own.charges)} is known`,
    cancels: cancelsText,
  };
}

/** How the speed of light cancels in a watt. */
function cancelsText(): string {
  const powers = powersMet('watt', 'lightSpeed');
  const sum = powers.reduce((total, power) => total + power, 0);
  const text = powers.map((power) => changeText('shown', { value: power, decimals: 0, unit: 'none' }));
  return `its powers on the way down are ${text.slice(0, -1).join(', ')} and ${text.at(-1)}, together ${sum === 0 ? 'nothing' : sum}`;
}

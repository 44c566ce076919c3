import { powerToLevel } from '../level.ts';
import { positive, powerW } from '../quantity.ts';
import type { Statement } from '../statement.ts';
import { type Influence, type MethodOutcome, type RelativeUnit, sumInDbm } from './method.ts';
import { inPercentOf } from './scaled-statement.ts';

/** What was read: DC volts and amperes into the load, and the two rises of its temperature above the room. */
export interface DcSubstitutionReading {
  readonly volts: number;
  readonly amperes: number;
  readonly riseRfK: number;
  readonly riseDcK: number;
  readonly influences: readonly DcSubstitutionInfluence[];
}

/**
 * Units of influences here. DC volts and amperes enter the power once each (P = V I), and so are no `percentOfVolts`;
 * kelvins are of the rise with RF or with DC.
 */
export type DcSubstitutionUnit =
  | 'dB'
  | 'percentOfPower'
  | 'percentOfDcVolts'
  | 'percentOfDcAmperes'
  | 'dcVolts'
  | 'dcAmperes'
  | 'kelvinRf'
  | 'kelvinDc';

export type DcSubstitutionInfluence = Influence<DcSubstitutionUnit>;

/** The influence as a share of the power; a rise with DC stands below the line, as a resistance does. */
function relative(
  influence: DcSubstitutionInfluence,
  { volts, amperes, riseRfK, riseDcK }: DcSubstitutionReading,
): Influence<RelativeUnit> {
  const of = (reading: number, unit: RelativeUnit): Influence<RelativeUnit> => {
    const statement: Statement = inPercentOf(reading, influence.statement);
    return { ...influence, statement, unit };
  };
  switch (influence.unit) {
    case 'dB':
    case 'percentOfPower':
      return { ...influence, unit: influence.unit };
    case 'percentOfDcVolts':
    case 'percentOfDcAmperes':
      return { ...influence, unit: 'percentOfPower' };
    case 'dcVolts':
      return of(volts, 'percentOfPower');
    case 'dcAmperes':
      return of(amperes, 'percentOfPower');
    case 'kelvinRf':
      return of(riseRfK, 'percentOfPower');
    case 'kelvinDc':
      return of(riseDcK, 'percentOfResistance');
  }
}

/**
 * Power of RF from the DC power that heats the same load as much: V I dTrf/dTdc, as a sum in dBm (a product becomes a
 * sum in logarithms). Best at equal rises, where the load's own law of cooling drops out.
 * @throws RangeError for a reading not above zero.
 * Source: substitution of DC power, the road to watts of the national laboratories.
 */
export function dcSubstitution(reading: DcSubstitutionReading): MethodOutcome {
  const { volts, amperes, riseRfK, riseDcK, influences } = reading;
  const where = 'dcSubstitution';
  const dc = positive(where, 'volts', volts) * positive(where, 'amperes', amperes);
  const ratio = positive(where, 'riseRfK', riseRfK) / positive(where, 'riseDcK', riseDcK);
  return sumInDbm(
    powerToLevel(powerW(dc * ratio)),
    influences.map((influence) => relative(influence, reading)),
  );
}

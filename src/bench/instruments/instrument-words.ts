import type { InstrumentEntries } from '../../instruments/instrument.ts';
import { isolated } from '../../text/isolate.ts';
import { fewestDecimals } from '../../text/place.ts';
import { dbText, quantityText } from '../../text/quantity-text.ts';
import { isGood, readField } from '../../text/read/field.ts';
import { statementText } from '../../text/statement-text.ts';
import { SETUP_SPECS } from '../read/setup-spec.ts';
import { statedText } from '../words/stated-link-text.ts';
import { hasLoss } from './as-link.ts';
import { type Instrument, readInstrument } from './read-instrument.ts';
import { instrumentStrings as strings } from './strings.ts';
import { byTerms, typedUnit } from './units.ts';

/** Nobody states a loss, a correction or a resistance to more decimals than this. */
const MOST_DECIMALS = 4;

const db = (value: number): string =>
  dbText('shown', { db: value, decimals: fewestDecimals(value, MOST_DECIMALS) });

/** The name of an instrument, or that it has none. */
export const nameOf = ({ label }: Pick<InstrumentEntries, 'label'>): string =>
  label.trim() || strings.unnamed;

/** Its name with its number or mark, for a list in which two may have the same name. */
export const fullName = (entries: Pick<InstrumentEntries, 'label' | 'serial'>): string =>
  [isolated(nameOf(entries)), isolated(entries.serial.trim())].filter((part) => part !== '').join(', ');

/** What an instrument states, in a line; undefined where its form is not finished. */
export function statementLine(entries: InstrumentEntries): string | undefined {
  const { instrument } = readInstrument(entries);
  if (instrument === undefined) return undefined;
  const parts = [
    ...nominal(entries, instrument),
    ...(instrument.correctionDb === 0 ? [] : [strings.corrected(correctionText(instrument))]),
    statedText('shown', {
      stated: instrument.stated,
      unit: byTerms(entries) ? 'dB' : typedUnit(entries.unit),
    }),
    ...drift(entries, instrument),
  ];
  return `${parts.join('; ')} (${strings.sources[sourceOf(entries)]})`;
}

const sourceOf = ({ basis, source }: InstrumentEntries) => (basis === 'dataSheet' ? basis : source);

/** A correction with its sign: it is added. */
const correctionText = ({ correctionDb }: Instrument): string =>
  `${correctionDb > 0 ? '+' : ''}${db(correctionDb)}`;

function nominal(entries: InstrumentEntries, { lossDb }: Instrument): readonly string[] {
  if (hasLoss(entries)) return [lossDb < 0 ? strings.gain(db(-lossDb)) : strings.loss(db(lossDb))];
  if (entries.kind !== 'load') return [];
  const field = readField(entries.resistance, SETUP_SPECS.load);
  if (!isGood(field)) return [];
  const { value } = field;
  return [quantityText('shown', { value, decimals: fewestDecimals(value, MOST_DECIMALS), unit: 'ohm' })];
}

function drift({ unit }: InstrumentEntries, { driftPerYear }: Instrument): readonly string[] {
  if (driftPerYear === undefined) return [];
  const statement = { form: 'limits', shape: 'rectangular', halfWidth: driftPerYear } as const;
  return [
    strings.driftLine(statementText('shown', { statement, unit: typedUnit(unit) }).split(',')[0] ?? ''),
  ];
}

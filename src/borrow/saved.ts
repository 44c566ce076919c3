import { typed } from '../bench/entries/typed.ts';
import { blankInstrument, withCalibration } from '../instruments/blank.ts';
import type { CalibrationEntries, InstrumentEntries, InstrumentKind } from '../instruments/instrument.ts';
import { plusMinusText } from '../text/deviation-text.ts';
import { fewestDecimals } from '../text/place.ts';
import { dbText, numberText } from '../text/quantity-text.ts';
import { readQuantity } from '../text/read/quantity.ts';
import { type Calibration, correctionAt, type Found, found } from './calibration.ts';
import type { Outcome } from './outcome.ts';
import type { PadFound } from './pad.ts';
import { mainCorrection } from './result-words.ts';
import { saveStrings as strings } from './save-strings.ts';
import { LEVEL, SPECS } from './specs.ts';

/** Decimals in which corrections and their uncertainties are kept: one more than anybody reads. */
const DECIMALS = 3;
/** Decimals of a stated uncertainty, as it was typed. */
const STATED_DECIMALS = 4;

/** Decimals of a frequency in MHz, down to the hertz: places that were two must not become one. */
const FREQUENCY_DECIMALS = 6;

/** Degrees of freedom from which k is 2.00 and no more. */
const AS_GOOD_AS_INFINITE = 1000;

const kept = (value: number, decimals = DECIMALS): string => typed(Number(value.toFixed(decimals)));

/** Kinds of instrument that a calibration can be saved to. */
export const kindsFor = (outcome: Outcome): readonly InstrumentKind[] =>
  outcome.kind === 'part' ? ['pad', 'cable'] : ['meter', 'other'];

/** Those of a list of kept instruments that a calibration can be saved to: a pad takes no correction of a meter. */
export const fitting = <Of extends { readonly value: InstrumentEntries }>(
  outcome: Outcome,
  list: readonly Of[],
): readonly Of[] => list.filter(({ value: { kind } }) => kindsFor(outcome).includes(kind));

type InDecibels = CalibrationEntries & { readonly unit: 'dB' };

/** The lender in words, with the statement that every correction rests on. */
function lenderText({ checked: { lender, notes } }: Calibration): string {
  const decimals = fewestDecimals(lender.amount, STATED_DECIMALS);
  const k = numberText('shown', { value: lender.factor, decimals: fewestDecimals(lender.factor, 2) });
  const stated =
    lender.form === 'expanded'
      ? strings.byCertificate(dbText('shown', { db: lender.amount, decimals }), k)
      : strings.byDataSheet(plusMinusText('shown', { halfWidth: lender.amount, decimals, unit: 'dB' }));
  return [notes.lender || strings.lender, stated, notes.conditions].filter(Boolean).join('; ');
}

/**
 * The one coverage factor that is kept of a calibration: the largest, a hair above 2 unless few readings say how they scatter, but
 * no larger than the form of an instrument takes.
 */
function factorOf(found: readonly Found[]): number {
  const largest = Math.max(...found.map(({ propagation }) => propagation.coverageFactor));
  return Math.min(SPECS.factor.max, Number(largest.toFixed(DECIMALS)));
}

/** U with that factor: with a larger one than its own, the same U would claim a smaller standard uncertainty than was found. */
const keptExpanded = ({ propagation }: Found, factor: number): string =>
  kept(factor * propagation.standardUncertainty);

/**
 * The degrees of freedom that are kept with that factor, those of the place that has least, cut to a whole number (GUM G.4.1): without
 * them a sheet would take an uncertainty from two or three rounds for known. Empty where they are as good as infinite.
 */
function freedomOf(found: readonly Found[]): string {
  const least = Math.min(...found.map(({ propagation }) => propagation.degreesOfFreedom));
  // what belongs to a whole number may be a hair below it
  return least < AS_GOOD_AS_INFINITE ? typed(Math.max(1, Math.floor(least + 1e-6))) : '';
}

/** Everything but the correction. */
const frame = (from: string, date: string, factor: number, freedom: string) => ({
  from,
  calibrated: date,
  factor: typed(factor),
  freedom,
  unit: 'dB' as const,
});

function fromTurns(calibration: Calibration): InDecibels {
  const { checked, line, places } = calibration;
  const from = lenderText(calibration);
  const read = places.map(({ at }) => ({ at, ...found(correctionAt(calibration, at)) }));
  const main = mainCorrection(calibration);
  const alone = line === undefined;
  const counted = alone ? [main] : read;
  const factor = factorOf(counted);
  return {
    source: 'borrowed',
    by: alone ? 'nothing' : checked.along,
    correction: alone ? kept(main.value) : '0',
    uncertainty: alone ? keptExpanded(main, factor) : '',
    table: alone
      ? ''
      : read
          .map((place) =>
            [
              kept(place.at, checked.along === 'frequency' ? FREQUENCY_DECIMALS : DECIMALS),
              kept(place.value),
              keptExpanded(place, factor),
            ].join('; '),
          )
          .join('\n'),
    ...frame(from, checked.notes.date, factor, freedomOf(counted)),
  };
}

/** A part's correction is its true loss less its nominal one. */
function fromPart(part: PadFound, nominal: number): InDecibels {
  const { notes, kind } = part.checked;
  const from = [strings.measured[kind], notes.conditions].filter(Boolean).join('; ');
  const factor = factorOf([part]);
  return {
    source: 'measured',
    by: 'nothing',
    correction: kept(part.value - nominal),
    uncertainty: keptExpanded(part, factor),
    table: '',
    ...frame(from, notes.date, factor, freedomOf([part])),
  };
}

/** The nominal loss that an instrument states, or else the nearest whole decibel. */
function nominalLoss({ loss }: InstrumentEntries, { value }: PadFound): number {
  const read = readQuantity(loss, { ...LEVEL, kind: 'gain' });
  return read.ok ? read.value : Math.round(value);
}

/**
 * The instrument with what was found here as its calibration, in place of the one before. Its name is the reader's own.
 * @param instrument undefined for one that is not kept yet: it is made, of the given kind and with the name in the form.
 */
export function savedTo(
  outcome: Exclude<Outcome, { kind: 'none' }>,
  instrument: InstrumentEntries | { readonly kind: InstrumentKind },
): InstrumentEntries {
  const entries = 'label' in instrument ? instrument : blankInstrument(instrument.kind);
  if (outcome.kind === 'calibration')
    return withCalibration(
      named(entries, outcome.calibration.checked.notes.name),
      fromTurns(outcome.calibration),
    );
  const { part } = outcome;
  const nominal = nominalLoss(entries, part);
  const whole = { ...named(entries, part.checked.notes.name), loss: entries.loss.trim() || typed(nominal) };
  return withCalibration(whole, fromPart(part, nominal));
}

const named = (entries: InstrumentEntries, name: string): InstrumentEntries =>
  entries.label.trim() === '' ? { ...entries, label: name } : entries;

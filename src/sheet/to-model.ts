import {
  dcSubstitution,
  exchanged,
  gainDb,
  type Influence,
  type Input,
  inLineLevel,
  levelDbm,
  type MethodOutcome,
  mean,
  mismatch,
  type OutOfRange,
  ohms,
  oscilloscope,
  padsIntoMeter,
  peakDetector,
  powerW,
  rangeError,
  type SumModel,
  voltsPeakToPeak,
} from '#compute';
import { influenceOf, inUnits } from './influence-of.ts';
import { keyingDb } from './keying.ts';
import { type LinkUnit, type MethodReading, shownBy, UNITS_OF } from './method.ts';
import { READINGS_ID, readingOf, scatterOf } from './scatter.ts';
import type { Link, Sheet } from './sheet.ts';

export { READINGS_ID };

/** The model of a sheet in dBm, or the reason why its method gives no number. */
export type SheetOutcome =
  | { readonly inRange: true; readonly model: SumModel }
  | { readonly inRange: false; readonly reason: OutOfRange };

/** Inputs that a method brings itself, by their ids: the oscilloscope's roll-off, an in-line meter's scales. */
export const OWN_IDS = ['rollOff', 'scale'] as const;

/**
 * The model of a sheet, in decibels: level at the transmitter = what the method makes of the reading + every loss + every link's
 * deviation. What the method brings itself stands first, then the links in their order, the scatter of the readings last.
 * @throws RangeError if the sheet has no reading, a statement is forbidden (limits of -100 % or more), or a link's unit is none
 * that the method understands.
 */
export function outcomeOf(sheet: Sheet): SheetOutcome {
  const reading = readingOf(sheet);
  const influences = [...sheet.links.map(influenceOf), ...scatterOf(sheet)];
  const outcome = outcomeBy(reading, influences, sheet);
  if (!outcome.inRange) return outcome;
  const { model } = outcome;
  if (model.kind !== 'sum')
    throw rangeError({ where: 'outcomeOf', wish: 'method must give a sum', got: reading.setup.method });
  const lossDb = sheet.links.reduce((sum, link) => sum + link.lossDb, 0);
  const constant = model.constant + lossDb + keyingDb(sheet.measurand, shownBy(reading.setup));
  return { inRange: true, model: ownFirst(withReflections({ ...model, constant }, sheet.links)) };
}

/** The model of a sheet whose method is in range. @throws RangeError otherwise, and as `outcomeOf`. */
export function toModel(sheet: Sheet): SumModel {
  const outcome = outcomeOf(sheet);
  if (!outcome.inRange)
    throw rangeError({ where: 'toModel', wish: 'method must be in range', got: outcome.reason.code });
  return outcome.model;
}

function outcomeBy(
  { setup, columns, frequencyHz }: MethodReading,
  influences: readonly Influence<LinkUnit>[],
  { measurand }: Sheet,
): MethodOutcome {
  const reading = mean(columns.readings);
  switch (setup.method) {
    case 'padsIntoMeter':
      return padsIntoMeter({
        reading: levelDbm(reading),
        corrections: [],
        gains: [gainDb(0)],
        ...(setup.floor !== undefined && { floor: setup.floor }),
        ...(setup.largest !== undefined && { largest: setup.largest }),
        influences: inUnits(influences, UNITS_OF.padsIntoMeter),
      });
    case 'oscilloscope':
      return oscilloscope({
        peakToPeak: voltsPeakToPeak(reading),
        resistance: ohms(setup.resistance),
        frequencyHz: frequencyHz ?? 0,
        bandwidthsHz: setup.bandwidthsHz,
        terminated: setup.terminated,
        influences: inUnits(influences, UNITS_OF.oscilloscope),
      });
    case 'peakDetector':
      return peakDetector({
        detectedV: reading,
        diodeDropV: setup.diodeDropV,
        resistance: setup.resistance,
        curveFromDc: setup.curveFromDc,
        influences: inUnits(influences, UNITS_OF.peakDetector),
      });
    case 'inLine': {
      const delivery = measurand.delivery === 'incident' ? 'incident' : 'net';
      return inLineLevel({
        forward: { power: powerW(reading), ...setup.forward },
        reflected: { power: powerW(mean(columns.reflected)), ...setup.reflected },
        delivery,
        influences: inUnits(influences, UNITS_OF.inLine),
      });
    }
    case 'dcSubstitution':
      return dcSubstitution({
        volts: mean(columns.volts),
        amperes: mean(columns.amperes),
        riseRfK: reading,
        riseDcK: mean(columns.riseDc),
        influences: inUnits(influences, UNITS_OF.dcSubstitution),
      });
  }
}

/** The exact shape of a mismatch in place of its limits. */
function withReflections(model: SumModel, links: readonly Link[]): SumModel {
  const exact = links.flatMap(({ id, reflections }): Input[] => {
    const input = model.inputs.find((candidate) => candidate.id === id);
    if (reflections === undefined || input === undefined) return [];
    return [{ ...input, distribution: mismatch(reflections) }];
  });
  return exact.length === 0 ? model : exchanged(model, exact);
}

/** What the method brings itself, before everything else. */
function ownFirst(model: SumModel): SumModel {
  const isOwn = ({ id }: Input): boolean => OWN_IDS.some((own) => own === id);
  const order = [
    ...model.inputs.flatMap((input, index) => (isOwn(input) ? [index] : [])),
    ...model.inputs.flatMap((input, index) => (isOwn(input) ? [] : [index])),
  ];
  return {
    ...model,
    inputs: order.flatMap((index) => model.inputs[index] ?? []),
    sensitivities: order.flatMap((index) => model.sensitivities[index] ?? []),
  };
}

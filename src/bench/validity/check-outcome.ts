import { checkDrift, checkFloor, checkReconnection, checkStep, harmonicsLimitsDb, mean } from '#compute';
import type { CheckFinding, CheckMade, CheckOutcome } from './check-found.ts';
import { CHECK_FIELDS, CHECKS_OF, type CheckKind, FLOOR_ADDS, respondsTo } from './check-kinds.ts';
import { checkLevel, floorLevel } from './check-level.ts';
import { type CheckQuestion, type CheckReader, checkReader } from './check-reader.ts';
import { checkStrings } from './check-strings.ts';

/** Where every check that is offered for the method stands. Never throws: what cannot be used is told. */
export const checkOutcomes = (question: CheckQuestion): readonly CheckOutcome[] =>
  CHECKS_OF[question.measurement.setup.method].map((check) => outcomeOf(check, question));

function outcomeOf(check: CheckKind, question: CheckQuestion): CheckOutcome {
  if (CHECK_FIELDS[check].every((key) => question.checks[key].trim() === ''))
    return { check, status: 'notMade' };
  const reader = checkReader(question);
  const made = makers[check](reader);
  if (made !== undefined && reader.whole()) return made;
  return { check, status: 'begun', missing: reader.missing, problems: reader.problems };
}

const verdict = (
  passed: boolean,
  allowedDb: number,
  found: CheckFinding,
  sure: boolean = true,
): CheckMade => ({
  check: found.check,
  status: !sure ? 'unclear' : passed ? 'passed' : 'failed',
  allowedDb,
  found,
});

/** What each check makes of its fields; undefined where one of them is missing or wrong. */
const makers: Readonly<Record<CheckKind, (reader: CheckReader) => CheckMade | undefined>> = {
  step: stepMade,
  floor: floorMade,
  reconnection: reconnectionMade,
  drift: (reader) => driftMade(reader, 'drift'),
  steady: (reader) => driftMade(reader, 'steady'),
  harmonics: harmonicsMade,
};

function stepMade(reader: CheckReader): CheckMade | undefined {
  const [withoutDb, withDb] = [reader.level('stepWithout'), reader.level('stepWith')];
  const [stepDb, allowedDb] = [reader.number('stepPad'), reader.number('stepAllowed')];
  if (!reader.whole()) return undefined;
  const { outcome } = checkStep({ withoutDb, withDb, stepDb, allowedDb });
  const found = { check: 'step', stepDb, movedDb: withoutDb - withDb, outcome } as const;
  return verdict(outcome === 'passed', allowedDb, found);
}

/** Of several points the lowest reading is nearest to the floor. */
const lowestReading = ({ measurement }: CheckQuestion): number =>
  Math.min(...measurement.points.map(({ columns }) => mean(columns.readings)));

function floorMade(reader: CheckReader): CheckMade | undefined {
  const [off, allowedDb] = [reader.number('off'), reader.allowed('offAllowed')];
  if (!reader.whole()) return undefined;
  const { setup } = reader.question.measurement;
  const adds = FLOOR_ADDS[setup.method];
  const floorDb = floorLevel(setup, off);
  if (floorDb === undefined) {
    const marginDb = Number.POSITIVE_INFINITY;
    return verdict(true, allowedDb, { check: 'floor', adds, marginDb, noiseDb: 0 });
  }
  const readingDb = checkLevel(setup, lowestReading(reader.question));
  const { marginDb, noiseDb, passed } = checkFloor({ readingDb, floorDb, allowedDb, adds });
  return verdict(passed, allowedDb, { check: 'floor', adds, marginDb, noiseDb });
}

function reconnectionMade(reader: CheckReader): CheckMade | undefined {
  const levels = reader.levels('reconnections', 2);
  const allowedDb = reader.allowed('reconnectionsAllowed');
  if (!reader.whole()) return undefined;
  const { standardDeviation, largestDifference, enough } = checkReconnection(levels);
  const found = {
    check: 'reconnection',
    count: levels.length,
    enough,
    standardDeviationDb: standardDeviation,
    largestDb: largestDifference,
  } as const;
  const passed = standardDeviation <= allowedDb;
  return verdict(passed, allowedDb, found, enough || !passed);
}

function driftMade(reader: CheckReader, check: 'drift' | 'steady'): CheckMade | undefined {
  const minutes = reader.column('warmUpMinutes', 3);
  const levels = reader.levels('warmUpLevels', 3);
  const allowedDb = reader.allowed('warmUpAllowed');
  if (!reader.whole()) return undefined;
  if (minutes.length !== levels.length)
    reader.fault('warmUpLevels', checkStrings.unequal({ minutes: minutes.length, levels: levels.length }));
  else if (minutes.every((time) => time === minutes[0])) reader.fault('warmUpMinutes', checkStrings.oneTime);
  if (!reader.whole()) return undefined;
  const { total, totalExpanded, significant } = checkDrift(
    levels.map((reading, index) => ({ time: minutes[index] ?? 0, reading })),
  );
  const span = Math.max(...minutes) - Math.min(...minutes);
  const passed = Math.abs(total) + totalExpanded <= allowedDb;
  const failed = Math.abs(total) > allowedDb && significant;
  const found = { check, minutes: span, totalDb: total, expandedDb: totalExpanded } as const;
  return verdict(passed, allowedDb, found, passed || failed);
}

function harmonicsMade(reader: CheckReader): CheckMade | undefined {
  const harmonicsDbc = [reader.optional('secondHarmonic'), reader.optional('thirdHarmonic')].filter(
    (level) => level !== undefined,
  );
  const allowedDb = reader.allowed('harmonicsAllowed');
  if (harmonicsDbc.length === 0) reader.number('secondHarmonic');
  if (!reader.whole()) return undefined;
  const responds = respondsTo(reader.question.measurement.setup);
  const { lower, upper } = harmonicsLimitsDb({ harmonicsDbc, responds });
  const found = { check: 'harmonics', responds, lowerDb: lower, upperDb: upper } as const;
  return verdict(Math.max(-lower, upper) <= allowedDb, allowedDb, found);
}

import { deviationsText, plusMinusText } from '../../text/deviation-text.ts';
import { decimalsFor } from '../../text/place.ts';
import { changeText, dbText, numberText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { CheckFinding, CheckMade, CheckOutcome } from './check-found.ts';
import type { CheckKind } from './check-kinds.ts';
import { checkOutcomes } from './check-outcome.ts';
import { type CheckQuestion, usualAllowance } from './check-reader.ts';
import { checkStrings as strings } from './check-strings.ts';

/** One check as a line of the record and of every export. */
export interface CheckLine {
  readonly check: CheckKind;
  readonly name: string;
  readonly status: CheckOutcome['status'];
  /** `passed`, `failed`, `not made` ... */
  readonly statusText: string;
  /** `One more known pad: passed`. */
  readonly heading: string;
  /** What it says; empty where nothing is typed. */
  readonly says: string;
}

/** Small effects to two significant digits, but to a tenth of a decibel at least and a thousandth at most. */
const dbOf = (style: Style, db: number): string => dbText(style, { db, decimals: placesOf(db) });
const placesOf = (db: number): number => (db === 0 ? 2 : Math.min(3, Math.max(1, decimalsFor(Math.abs(db)))));

/** Every check that the method offers, made or not, in words. */
export const checkLines = (style: Style, question: CheckQuestion): readonly CheckLine[] =>
  checkOutcomes(question).map((outcome) => checkLine(style, outcome));

/** A check as a line. */
export function checkLine(style: Style, outcome: CheckOutcome): CheckLine {
  const { check, status } = outcome;
  const name = strings.names[check];
  const statusText = strings.statuses[status];
  const heading = strings.line({ name, status: statusText });
  return { check, name, status, statusText, heading, says: saysOf(style, outcome) };
}

/** The checks that failed, as cautions near the result: what was found, and what to do about it. */
export const failedChecks = (style: Style, question: CheckQuestion): readonly string[] =>
  checkLines(style, question)
    .filter(({ status }) => status === 'failed')
    .map(({ check, name, says }) => [strings.failed(name), says, strings.remedy[check]].join(' '));

/** What an empty allowance stands for. */
export function allowanceNote(style: Style, question: CheckQuestion): string {
  const usual = usualAllowance(question);
  return usual === undefined ? strings.noUsual : strings.usual(dbOf(style, usual));
}

function saysOf(style: Style, outcome: CheckOutcome): string {
  if (outcome.status === 'notMade') return '';
  if (outcome.status !== 'begun') return madeWords(style, outcome);
  const { missing, problems } = outcome;
  if (problems.length > 0) return strings.faulty;
  return strings.missing(missing.map((key) => strings.labels[key]).join('; '));
}

function madeWords(style: Style, { found, allowedDb, status }: CheckMade): string {
  const allowed = dbOf(style, allowedDb);
  const sentences = wordsOf(style, found, allowed);
  return [...sentences, ...doubtWords(found, status)].filter((sentence) => sentence !== '').join(' ');
}

/** Why a check says neither that all is well nor that it is not. */
function doubtWords(found: CheckFinding, status: CheckMade['status']): readonly string[] {
  if (found.check === 'reconnection' && !found.enough) return [strings.says.few];
  return status === 'unclear' ? [strings.says.lost] : [];
}

function wordsOf(style: Style, found: CheckFinding, allowed: string): readonly string[] {
  const { says } = strings;
  const db = (value: number): string => dbOf(style, value);
  switch (found.check) {
    case 'step':
      return [
        says.step({
          moved: dbText(style, { db: found.movedDb, decimals: 2 }),
          step: dbText(style, { db: found.stepDb, decimals: 1 }),
          allowed,
        }),
        says.stepOutcome[found.outcome],
      ];
    case 'floor':
      return [floorWords(style, found, allowed)];
    case 'reconnection':
      return [
        says.reconnection({
          count: numberText(style, { value: found.count, decimals: 0 }),
          s: db(found.standardDeviationDb),
          largest: db(found.largestDb),
          allowed,
        }),
      ];
    case 'drift':
    case 'steady':
      return [
        says.drift({
          total: changeText(style, { value: found.totalDb, decimals: 2, unit: 'dB' }),
          sure: plusMinusText(style, { halfWidth: found.expandedDb, decimals: 2, unit: 'dB' }),
          minutes: numberText(style, {
            value: found.minutes,
            decimals: Number.isInteger(found.minutes) ? 0 : 1,
          }),
          allowed,
        }),
      ];
    case 'harmonics':
      return [harmonicsWords(style, found, allowed)];
  }
}

function floorWords(
  style: Style,
  { marginDb, noiseDb }: Extract<CheckFinding, { check: 'floor' }>,
  allowed: string,
): string {
  if (marginDb === Number.POSITIVE_INFINITY) return strings.says.nothing;
  if (!Number.isFinite(noiseDb)) return strings.says.atFloor;
  const margin = dbText(style, { db: marginDb, decimals: 1 });
  return strings.says.floor({ margin, adds: dbOf(style, noiseDb), allowed });
}

function harmonicsWords(
  style: Style,
  { responds, lowerDb, upperDb }: Extract<CheckFinding, { check: 'harmonics' }>,
  allowed: string,
): string {
  if (responds === 'mean') return strings.says.harmonics.mean({ upper: dbOf(style, upperDb), allowed });
  const decimals = placesOf(upperDb);
  const both = deviationsText(style, { upper: upperDb, lower: lowerDb, decimals, unit: 'dB' });
  return strings.says.harmonics.peak({ both, allowed });
}

import {
  dbToPowerRatio,
  gainDb,
  type LevelDbm,
  levelDbm,
  levelToPower,
  levelToVolts,
  ohms,
  powerToLevel,
  powerW,
} from '#compute';
import { defaultState } from '../../address/field-spec.ts';
import { type LinePart, levelAtEnd, lineGain, lineSteps, radiatedLevels } from '../../sheet/line.ts';
import { ABOVE_NOMINAL_DB } from '../../sheet/line-cautions.ts';
import { type LineSlip, lineSlip } from '../../sheet/line-slips.ts';
import { dbText, levelText, percentText, quantityText } from '../../text/quantity-text.ts';
import { type LineState, lineOf, stairsSpec } from '../../widgets/level-diagram/spec.ts';
import {
  againstDamage,
  cautionsFor,
  change,
  dbm,
  heatIn,
  inputOf,
  levelAndPower,
  watts,
} from '../../widgets/level-diagram/words.ts';

const INPUT_OHM = 50;
/** The sister transmitter with a directional antenna, for the way to an antenna; invented. */
const SISTER = { end: 'antenna', coax: 0.6, antenna: 5 } as const;
/** An amplifier that somebody puts in front of pads chosen without it. */
const AMPLIFIER_DB = 10;

const shown = (text: (style: 'shown', value: number) => string) => (value: number) => text('shown', value);
const level = shown(dbm);
const power = shown(watts);

/** What a slip states, against what is true: `−13.1 dBm for 27.0 dBm, −40.1 dB`. */
function cost(slip: LineSlip, state: LineState): string {
  const { stated, truth, error } = lineSlip(slip, lineOf(state));
  const decimals = slip === 'reference' ? 2 : 1;
  const at = (levelDbm: number): string => levelText('shown', { levelDbm, decimals });
  return `${at(stated)} for ${at(truth)}, ${change('shown', error, decimals)}`;
}

/** Heat in a part at the upper limits. */
function heat(state: LineState, id: LinePart): number {
  const found = heatIn(cautionsFor(state), id);
  if (found === undefined) throw new RangeError(`lineValues: a part must take something away, got ${id}`);
  return found.heat;
}

/** The line without a part: level at the input, and where it stands against damage. */
function without(state: LineState, id: LinePart): string {
  const input = inputOf(cautionsFor(state, id));
  return `up to ${level(input.level)}, ${againstDamage('shown', input)}`;
}

/** Numbers of the lesson on levels down a line: the line of its figure, and what it makes of an antenna. */
export function lineValues(): Readonly<Record<string, () => string>> {
  return { ...downValues(), ...backValues(), ...safeValues(), ...radiatedValues() };
}

const prepared = (): LineState => defaultState(stairsSpec.fields);
const upperOf = (state: LineState): LevelDbm => levelDbm(state.level + ABOVE_NOMINAL_DB);

/** From the socket to the input. */
function downValues() {
  const state = prepared();
  const line = lineOf(state);
  const after = (id: LinePart): LevelDbm =>
    lineSteps(line).find((step) => step.id === id)?.to ?? levelDbm(line.levelDbm);
  return {
    level: () => level(line.levelDbm),
    power: () => power(levelToPower(levelDbm(line.levelDbm))),
    afterFirst: () => levelAndPower('shown', after('first')),
    afterCoax: () => level(after('coax')),
    atInput: () => levelAndPower('shown', levelAtEnd(line)),
    firstShare: () => share(1 - dbToPowerRatio(gainDb(-state.first))),
    firstHeat: () => power(heat(state, 'first')),
    secondHeat: () => power(heat(state, 'second')),
    upper: () => level(upperOf(state)),
    upperPower: () => power(levelToPower(upperOf(state))),
  };
}

/** From a reading back to the socket. */
function backValues() {
  const state = prepared();
  const line = lineOf(state);
  return {
    reading: () => level(levelAtEnd(line)),
    loss: () => dbText('shown', { db: 0 - lineGain(line), decimals: 1 }),
    forgotten: () => cost('forgotten', state),
    forgottenPower: () => power(levelToPower(lineSlip('forgotten', line).stated)),
    subtracted: () => cost('subtracted', state),
    twice: () => cost('twice', state),
  };
}

/** What the parts and the input must stand. */
function safeValues() {
  const state = prepared();
  const input = inputOf(cautionsFor(state));
  return {
    atMost: () => level(input.level),
    margin: () => againstDamage('shown', input),
    withoutFirst: () => without(state, 'first'),
    withoutSecond: () => without(state, 'second'),
    withoutFirstInto: () => power(heatIn(cautionsFor(state, 'first'), 'second')?.incident ?? 0),
    amplifiedHeat: () => power(heat({ ...state, amplifier: AMPLIFIER_DB }, 'first')),
    quarterVolts: () => volts(powerToLevel(powerW(0.25))),
    upperVolts: () => volts(upperOf(state), 2),
  };
}

/** The sister’s line to an antenna. */
function radiatedValues() {
  const sister: LineState = { ...prepared(), ...SISTER };
  const { eirp, erp } = radiatedLevels(lineOf(sister));
  return {
    atAntenna: () => level(levelAtEnd(lineOf(sister))),
    eirp: () => levelAndPower('shown', eirp, 2),
    eirpLevel: () => levelText('shown', { levelDbm: eirp, decimals: 2 }),
    erp: () => levelAndPower('shown', erp, 2),
    dipole: () => dbText('shown', { db: eirp - erp, decimals: 2 }),
    reference: () => cost('reference', sister),
    coaxShare: () => share(dbToPowerRatio(gainDb(-SISTER.coax))),
  };
}

const share = (ratio: number): string => percentText('shown', { percent: 100 * ratio, decimals: 0 });

const volts = (at: number, decimals = 1): string =>
  quantityText('shown', {
    value: levelToVolts({ level: levelDbm(at), resistance: ohms(INPUT_OHM) }),
    decimals,
    unit: 'Vrms',
  });

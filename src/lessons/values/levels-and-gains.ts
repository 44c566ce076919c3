import {
  coherentSum,
  dbwToLevel,
  type LevelDbm,
  levelDbm,
  levelToPower,
  levelToVolts,
  ohms,
  powerToLevel,
  powerW,
  sumOfLevels,
} from '#compute';
import { clubSheet } from '../../sheet/club.ts';
import { clubPadHeat } from '../../sheet/club-pad.ts';
import { powerText } from '../../text/power-text.ts';
import { changeText, dbText, levelText, quantityText } from '../../text/quantity-text.ts';

const NOMINAL_DBM = 27;
const READING_DBM = 7;
const PADS_DB = [20, 6] as const;
/** The pad and the coax between the socket and the lent meter, as losses. */
const CHAIN_DB = [20, 0.1] as const;
/** What the pad may take less than is written on it, by its data sheet. */
const PAD_LIMIT_DB = 0.5;
const EACH_DBM = 17;
const WEAK_DBM = 7;
const LOAD_OHM = 50;

const level = (dbm: number, decimals = 1): string => levelText('shown', { levelDbm: dbm, decimals });
const power = (dbm: number, digits = 3): string =>
  powerText('shown', { powerW: levelToPower(levelDbm(dbm)), digits });
const db = (value: number, decimals: number): string => dbText('shown', { db: value, decimals });
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
const pair = (a: number, b: number): readonly LevelDbm[] => [levelDbm(a), levelDbm(b)];
const inPhase = (levels: readonly LevelDbm[], phaseDegrees = 0): number =>
  coherentSum(levels.map((one, index) => ({ level: one, phaseDegrees: index * phaseDegrees })));
const change = (value: number): string => changeText('shown', { value, decimals: 2, unit: 'dB' });
const volts = (dbm: number): string =>
  quantityText('shown', {
    value: levelToVolts({ level: levelDbm(dbm), resistance: ohms(LOAD_OHM) }),
    decimals: 2,
    unit: 'Vrms',
  });

/** Numbers of the lesson on levels and gains. */
export function levelsValues(): Readonly<Record<string, () => string>> {
  const behindPads = NOMINAL_DBM - sum(PADS_DB);
  const socket = READING_DBM + sum(CHAIN_DB);
  return {
    ...lineValues({ behindPads, socket }),
    ...signalValues(),
    ...costValues(socket),
    ...cautionValues(),
  };
}

function lineValues({ behindPads, socket }: { behindPads: number; socket: number }) {
  return {
    nominal: () => level(NOMINAL_DBM, 0),
    nominalPower: () => power(NOMINAL_DBM),
    behindPads: () => level(behindPads),
    behindPadsPower: () => power(behindPads),
    socket: () => level(socket),
    socketPower: () => power(socket),
    tenth: () => power(-10),
    thousandth: () => power(-30),
    watt: () => level(powerToLevel(powerW(1)), 0),
  };
}

function signalValues() {
  const equal = pair(EACH_DBM, EACH_DBM);
  const unequal = pair(EACH_DBM, WEAK_DBM);
  return {
    each: () => power(EACH_DBM),
    both: () => level(sumOfLevels(equal)),
    bothPower: () => power(sumOfLevels(equal)),
    bothMore: () => change(sumOfLevels(equal) - EACH_DBM),
    inPhase: () => level(inPhase(equal)),
    inPhaseMore: () => change(inPhase(equal) - EACH_DBM),
    inPhasePower: () => power(inPhase(equal)),
    oneVolts: () => volts(EACH_DBM),
    bothVolts: () => volts(inPhase(equal)),
    thirdTurn: () => level(inPhase(equal, 120)),
    weakMore: () => change(sumOfLevels(unequal) - EACH_DBM),
    weakUp: () => change(inPhase(unequal) - EACH_DBM),
    weakDown: () => change(inPhase(unequal, 180) - EACH_DBM),
  };
}

/** What the mistakes cost, each short enough for one line of a phone. */
function costValues(socket: number) {
  return {
    costSum: () => `${power(2 * EACH_DBM)} claimed for ${power(sumOfLevels(pair(EACH_DBM, EACH_DBM)))}`,
    costThreeDbm: () => `${power(sumOfLevels(pair(NOMINAL_DBM, 3)))} for ${power(NOMINAL_DBM + 3)}`,
    costNoReference: () => `${power(30, 1)} or ${power(dbwToLevel(30), 1)}?`,
    costForgotten: () => `${power(READING_DBM + CHAIN_DB[1])} for ${power(socket)}`,
    costSubtracted: () => `${power(READING_DBM - sum(CHAIN_DB))} for ${power(socket)}`,
    costZero: () => `no power for ${power(0, 1)}`,
  };
}

function cautionValues() {
  const upper = clubSheet().specification.upper ?? NOMINAL_DBM;
  const stands = clubSheet().damageLevelDbm ?? upper;
  return {
    upper: () => level(upper),
    padLeast: () => db(CHAIN_DB[0] - PAD_LIMIT_DB, 1),
    meterLevel: () => level(upper - CHAIN_DB[0] + PAD_LIMIT_DB),
    stands: () => level(stands, 0),
    padHeat: () => powerText('shown', { powerW: clubPadHeat(), digits: 3 }),
    damage: () => db(upper - stands, 1),
  };
}

import { levelDbm, levelToPower, ohms, voltsOfPower } from '#compute';
import { SPECIFIED_UPPER_DBM } from '../../sheet/found.ts';
import {
  highestVolts,
  type Line,
  type LinePowers,
  linePowers,
  reachesDb,
  returnLossHere,
  shownSwr,
  swrHere,
} from '../../sheet/what-comes-back.ts';
import { aloud } from '../../text/aloud.ts';
import { powerText } from '../../text/power-text.ts';
import {
  changeText,
  dbText,
  levelText,
  numberText,
  percentText,
  quantityText,
} from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { Answer } from '../parts/answer.ts';
import { type BackState, lineOf } from './spec.ts';
import { strings } from './strings.ts';

const LINE_OHM = ohms(50);

export const swrText = (style: Style, value: number): string =>
  numberText(style, { value, decimals: value < 10 ? 2 : 1 });
const watts = (style: Style, powerW: number): string => powerText(style, { powerW, digits: 3 });
const volts = (value: number): string => quantityText('shown', { value, decimals: 2, unit: 'Vrms' });

/** What the meter may show of the standing wave at its end. */
export function rangeText(style: Style, line: Line): string {
  const { least, most } = shownSwr(line);
  if (most === undefined) return strings.rangeOpen(swrText(style, least));
  if (least === 1) return strings.noLeast({ most: swrText(style, most) });
  return strings.range({ least: swrText(style, least), most: swrText(style, most) });
}

/** Standing wave at both ends, what the antenna takes, and what comes back. */
export function answersOf(state: BackState, style: Style = 'shown'): readonly [Answer, Answer, Answer] {
  const line = lineOf(state);
  const { taken, back, heat } = linePowers(line);
  const given = levelToPower(levelDbm(line.levelDbm));
  return [
    {
      figure: strings.swr(swrText(style, swrHere(line))),
      words: strings.swrWords({
        there: swrText(style, line.antennaSwr),
        loss: dbText(style, { db: returnLossHere(line), decimals: 1 }),
        range: rangeText(style, line),
      }),
    },
    {
      figure: strings.taken(watts(style, taken)),
      words: strings.takenWords({
        change: changeText(style, { value: reachesDb(line), decimals: 2, unit: 'dB' }),
        given: watts(style, given),
        heat: watts(style, heat),
      }),
    },
    { figure: strings.back(watts(style, back)), words: strings.backWords[line.match] },
  ];
}

/** A row of the table of powers. */
export interface PowerRow {
  readonly id: keyof LinePowers;
  readonly name: string;
  readonly power: string;
  readonly share: string;
}

/** Powers along the line, each as a share of what the transmitter gives into a match. */
export function powerRows(state: BackState): readonly PowerRow[] {
  const line = lineOf(state);
  const powers = linePowers(line);
  const given = levelToPower(levelDbm(line.levelDbm));
  // The order of the rows is that of the words; Object.keys forgets what they are.
  const ids = Object.keys(strings.rows) as (keyof LinePowers)[];
  return ids.map((id) => ({
    id,
    name: strings.rows[id],
    power: watts('shown', powers[id]),
    share: percentText('shown', { percent: (100 * powers[id]) / given, decimals: 1 }),
  }));
}

/** What socket and line, and whoever touches them, have to reckon with. */
export function cautionText(state: BackState): string {
  const line = lineOf(state);
  const level = levelDbm(Math.max(SPECIFIED_UPPER_DBM, line.levelDbm));
  return strings.caution({
    level: levelText('shown', { levelDbm: level, decimals: 1 }),
    volts: volts(highestVolts(line, level)),
    matched: volts(voltsOfPower({ power: levelToPower(level), resistance: LINE_OHM })),
    heat: watts('shown', linePowers({ ...line, levelDbm: level }).heat),
  });
}

/** The settled state in one spoken sentence. */
export const summarise = (state: BackState): string =>
  aloud(answersOf(state, 'spoken').map(({ figure }) => figure));

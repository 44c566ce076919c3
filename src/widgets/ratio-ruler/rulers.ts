import { amplitudeRatioToDb, gainDb, powerRatioToDb } from '#compute';
import type { Lane, Needle, Ruler, RulerTick } from '../../figures/rulers.types.ts';
import { factorText } from '../../text/factor-text.ts';
import { numberText } from '../../text/quantity-text.ts';
import { GAIN } from './spec.ts';
import { type RatioState, slippedDb } from './state.ts';
import { DB_OF_TEN, DB_OF_TWO, stepsOf } from './steps.ts';
import { strings } from './strings.ts';
import { dbWords, powerFactor, restText, tensText, twosText, voltsFactor } from './words.ts';

const domain = { lower: GAIN.min, upper: GAIN.max };
/** Name of the handle of the line across. */
const NEEDLE = 'ratio';

/** The three rulers of one length, what the ratio is on each, and its steps above them. */
export function ratioFigure(state: RatioState): {
  rulers: readonly Ruler[];
  lanes: readonly Lane[];
  needles: readonly Needle[];
} {
  const { gainDb: db } = state;
  const slipped = slippedDb(state);
  return {
    rulers: [
      { id: 'power', title: strings.power, reading: powerFactor('shown', db), domain, ticks: powerTicks() },
      { id: 'decibels', title: strings.decibels, reading: dbWords('shown', db), domain, ticks: dbTicks() },
      { id: 'volts', title: strings.volts, reading: voltsFactor('shown', db), domain, ticks: voltsTicks() },
    ],
    lanes: lanesOf(db),
    needles: [...(slipped === undefined ? [] : [{ at: slipped }]), { at: db, handle: NEEDLE }],
  };
}

/** Always three lanes, so that the figure keeps its height while the ratio moves. */
function lanesOf(db: number): Lane[] {
  const steps = stepsOf(gainDb(db));
  const signed = (count: number, size: number): number[] =>
    Array.from({ length: Math.abs(count) + 1 }, (_, index) => Math.sign(count) * index * size);
  const tens = signed(steps.tens, DB_OF_TEN);
  const afterTens = tens.at(-1) ?? 0;
  const twos = signed(steps.twos, DB_OF_TWO).map((at) => afterTens + at);
  const afterTwos = twos.at(-1) ?? 0;
  const lane = (id: string, label: string, stops: readonly number[]): Lane => ({
    id,
    label,
    stops: stops.length > 1 ? stops : [stops[0] ?? 0, stops[0] ?? 0],
  });
  return [
    lane('tens', tensText('shown', steps), tens),
    lane('twos', twosText('shown', steps), twos),
    lane('rest', restText('shown', steps), [afterTwos, afterTwos + steps.restDb]),
  ];
}

/** Every decibel has its division; the tens and the threes are the landmarks. */
function dbTicks(): RulerTick[] {
  const ticks: RulerTick[] = [];
  for (let db = GAIN.min; db <= GAIN.max; db++) {
    const landmark = db % DB_OF_TEN === 0 || Math.abs(db) === DB_OF_TWO;
    const text =
      landmark || Math.abs(db) === 2 * DB_OF_TWO ? numberText('shown', { value: db, decimals: 0 }) : '';
    ticks.push({ at: db, text, rank: landmark ? 0 : text === '' ? 2 : 1 });
  }
  return ticks;
}

const powerTicks = (): RulerTick[] => ratioTicks(powerRatioToDb);
const voltsTicks = (): RulerTick[] => ratioTicks(amplitudeRatioToDb);

/** Decades of power that fit on one side of the ruler. */
const DECADES = 3;
const DIVISIONS = [1, 2, 3, 4, 5, 6, 7, 8, 9] as const;
const NAMED_DIVISIONS = 5;

/** Multiplied to the right, divided to the left, in the same divisions; tens and the first two are landmarks. */
function ratioTicks(toDb: (ratio: number) => number): RulerTick[] {
  const ticks: RulerTick[] = [{ at: 0, text: factor(1), rank: 0 }];
  for (let decade = 0; decade <= DECADES; decade++)
    for (const division of DIVISIONS) {
      const ratio = Number(`${division}e${decade}`);
      const at = toDb(ratio);
      if (ratio === 1 || at > GAIN.max) continue;
      const rank = division === 1 || ratio === 2 ? 0 : division === 2 || division === NAMED_DIVISIONS ? 1 : 2;
      const name = (value: number): string => (rank === 2 ? '' : factor(value));
      ticks.push({ at, text: name(ratio), rank }, { at: -at, text: name(1 / ratio), rank });
    }
  return ticks;
}

/** A round ratio as its factor, without digits that say nothing: the divisions have one digit and zeros. */
const factor = (ratio: number): string => factorText('shown', { ratio, digits: 1 });

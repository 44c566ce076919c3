import { powerToLevel, powerW } from '#compute';
import type { Lane, Ruler, RulerTick } from '../../figures/rulers.types.ts';
import { levelText, numberText } from '../../text/quantity-text.ts';
import { meansOf } from './means.ts';
import { type MeansState, meansSpec } from './spec.ts';
import { strings } from './strings.ts';

const { min, max } = meansSpec.fields.first;
const domain = { lower: min, upper: max };
const NAMED_STEP = 5;
const MILLIWATT = 1e-3;

/** The readings and their means as lanes, above a ruler of levels and one of powers. */
export function meansFigure(state: MeansState): { rulers: readonly Ruler[]; lanes: readonly Lane[] } {
  const { ofDecibelsDbm, ofPowersDbm } = meansOf(state);
  const readings = (['first', 'second', 'third'] as const).map(
    (id): Lane => ({
      id,
      label: levelText('shown', { levelDbm: state[id], decimals: 1 }),
      stops: [state[id]],
      handle: true,
    }),
  );
  const result = (id: string, label: string, dbm: number): Lane => ({
    id,
    label,
    stops: [dbm],
    result: true,
  });
  const ruler = (id: string, title: string, ticks: readonly RulerTick[]): Ruler => ({
    id,
    title,
    reading: '',
    domain,
    ticks,
  });
  return {
    lanes: [
      ...readings,
      result('decibels', strings.decibelsLane(mean(ofDecibelsDbm)), ofDecibelsDbm),
      result('powers', strings.powersLane(mean(ofPowersDbm)), ofPowersDbm),
    ],
    rulers: [
      ruler('levels', strings.levelRuler, levelTicks()),
      ruler('milliwatts', strings.powerRuler, powerTicks()),
    ],
  };
}

/** A mean without its unit, which stands on the ruler: there is little room beside a point on a phone. */
const mean = (dbm: number): string => numberText('shown', { value: dbm, decimals: 2 });

function levelTicks(): RulerTick[] {
  const ticks: RulerTick[] = [];
  for (let at = min; at <= max; at++) {
    const named = at % NAMED_STEP === 0;
    ticks.push({
      at,
      rank: named ? 0 : 1,
      text: named ? numberText('shown', { value: at, decimals: 0 }) : '',
    });
  }
  return ticks;
}

/** Milliwatts 1, 2 ... 9, 10, 20 ... 100: the first, second and fifth of each decade named. */
const powerTicks = (): RulerTick[] =>
  [1, 10, 100].flatMap((decade) =>
    [1, 2, 3, 4, 5, 6, 7, 8, 9].map((division) => {
      const milliwatts = division * decade;
      const rank = division === 1 ? 0 : division === 2 || division === NAMED_STEP ? 1 : 2;
      return {
        at: powerToLevel(powerW(milliwatts * MILLIWATT)),
        rank,
        text: rank === 2 ? '' : numberText('shown', { value: milliwatts, decimals: 0 }),
      };
    }),
  );

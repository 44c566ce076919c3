import type { Interval } from '#compute';
import { levelTicks, tickDecimals } from '../../figures/axis-ticks.ts';
import type { Ruler, RulerTick } from '../../figures/rulers.types.ts';
import { axisPowerText } from '../../text/axis-text.ts';
import { numberText } from '../../text/quantity-text.ts';
import type { FieldsState } from '../parts/fields.ts';
import { claimedEnds, endsOf, onRuler, type RulerName } from './band.ts';
import type { BandRulersFields, BandRulersState } from './spec.ts';
import { strings } from './strings.ts';
import { dbEnds, voltsText, wattsText } from './words.ts';

/** Half of a ruler: in dB, or as a share of the middle. Round, so that small changes do not rescale the figure. */
const HALVES: Readonly<Record<RulerName, readonly number[]>> = {
  level: [0.25, 0.5, 1, 2, 3, 5],
  power: [0.05, 0.1, 0.2, 0.5, 1],
  volts: [0.02, 0.05, 0.1, 0.2, 0.5],
};
const MARGIN = 1.1;
const TICKS = 6;

/** The three rulers of a state; while a handle is held they keep the size that they had, so that nothing shifts under it. */
export function bandFigure({ values, held }: Pick<FieldsState<BandRulersFields>, 'values' | 'held'>): {
  rulers: readonly Ruler[];
} {
  const titles = { level: strings.level, power: strings.power };
  const readings = {
    level: dbEnds('shown', endsOf(values)),
    power: wattsText('shown', values),
    volts: voltsText('shown', values, 'V'),
  };
  const claimed = claimedEnds(values);
  const rulers = (['level', 'power', 'volts'] as const).map((name): Ruler => {
    const domain = domainOf(name, held ?? values);
    const at = (ends: Interval): Interval => ({
      lower: onRuler(name, values.level + ends.lower),
      upper: onRuler(name, values.level + ends.upper),
    });
    return {
      id: name,
      title: name === 'volts' ? strings.volts : `${titles[name]}, ${unitOf(name, domain)}`,
      reading: readings[name],
      domain,
      ticks: ticksOf(name, domain),
      strip: at(endsOf(values)),
      middle: onRuler(name, values.level),
      handle: true,
      ...(claimed && { ghost: at(claimed) }),
    };
  });
  return { rulers };
}

/** A ruler with the middle of the band in its middle, wide enough for the band; a claim that is wider is cut off. */
function domainOf(name: RulerName, state: BandRulersState): Interval {
  const middle = onRuler(name, state.level);
  const { lower, upper } = endsOf(state);
  const share = name === 'level' ? 1 : middle;
  const reach = Math.max(
    ...[lower, upper].map((db) => Math.abs(onRuler(name, state.level + db) - middle) / share),
  );
  const halves = HALVES[name];
  const half = halves.find((size) => size >= reach * MARGIN) ?? halves.at(-1) ?? 1;
  return { lower: middle - half * share, upper: middle + half * share };
}

function unitOf(name: 'level' | 'power', domain: Interval): string {
  return name === 'level' ? 'dBm' : axisPowerText(levelTicks({ ...domain, count: TICKS })).unit;
}

/** Even divisions with their numbers; a zero of the axis belongs to the unit of the others. */
function ticksOf(name: RulerName, domain: Interval): readonly RulerTick[] {
  const values = levelTicks({ ...domain, count: TICKS });
  const decimals = tickDecimals(values);
  const powers = name === 'power' ? axisPowerText(values).texts : undefined;
  return values.map((at, index) => ({
    at,
    // No power has no unit of its own: its zero is the others'.
    text:
      at === 0
        ? numberText('shown', { value: 0, decimals: 0 })
        : (powers?.[index] ?? numberText('shown', { value: at, decimals })),
    rank: 1,
  }));
}

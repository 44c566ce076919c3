import type { Interval } from '#compute';
import { levelDbm, levelToPower, powerToLevel, powerW } from '#compute';
import { levelTicks, powerTicks, spaced, tickDecimals } from './axis-ticks.ts';
import { coordinate, type LinearScale } from './linear-scale.ts';

/** A tick of an axis; `named` is false where its text would touch the one before. */
export interface Tick {
  readonly x: number;
  readonly value: number;
  readonly decimals: number;
  readonly named: boolean;
}

/** What an axis is laid out by: its ends in dBm, its scale, about how many ticks, and the least room between two names. */
export interface AxisWish {
  readonly within: Interval;
  readonly scale: LinearScale;
  readonly tickCount: number;
  readonly tickRoom: number;
}

/** Round levels on an axis of levels. */
export function levelAxis({ within, scale, tickCount, tickRoom }: AxisWish): Tick[] {
  const values = levelTicks({ ...within, count: tickCount });
  const decimals = tickDecimals(values);
  return spaced(
    values.map((value) => ({ x: coordinate(scale(value)), value, decimals })),
    tickRoom,
  );
}

/** Round powers on an axis of levels, so unevenly spaced. */
export function powerAxis({ within, scale, tickCount, tickRoom }: AxisWish): Tick[] {
  const watts = (level: number): number => levelToPower(levelDbm(level));
  const values = powerTicks({ lower: watts(within.lower), upper: watts(within.upper), count: tickCount });
  const marks = values.map((value) => ({
    x: coordinate(scale(powerToLevel(powerW(value)))),
    value,
    decimals: 0,
  }));
  return spaced(marks, tickRoom);
}

/** Stubs of ticks as a path, downwards from `y`, upwards where `length` is negative. */
export const stubs = (ticks: readonly Tick[], y: number, length: number): string =>
  ticks.map(({ x }) => `M${x} ${y}v${length}`).join('');

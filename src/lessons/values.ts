import { bandsValues } from './values/a-decibel-is-not-a-percentage.ts';
import { readingsValues } from './values/a-few-readings.ts';
import { triesValues } from './values/a-million-tries.ts';
import { anglesValues } from './values/at-right-angles.ts';
import { blocksValues } from './values/blocks-and-warm-hands.ts';
import { borrowedValues } from './values/borrowing-a-calibration.ts';
import { meterValues } from './values/calibration-changes-nothing.ts';
import { lineValues } from './values/down-the-line.ts';
import { inLineValues } from './values/in-line-meter.ts';
import { verdictValues } from './values/inside-outside-cant-tell.ts';
import { levelsValues } from './values/levels-and-gains.ts';
import { rulesValues } from './values/measuring-is-comparing.ts';
import { scopeValues } from './values/oscilloscope-across-a-load.ts';
import { padsValues } from './values/pads-into-a-meter.ts';
import { detectorValues } from './values/peak-detector.ts';
import { heatValues } from './values/radio-watts-from-dc-watts.ts';
import { ratiosValues } from './values/ratios-that-add.ts';
import { sharedValues } from './values/shared-causes.ts';
import { chainValues } from './values/the-chain-to-the-definition.ts';
import { joinedValues } from './values/the-meter-joins-the-circuit.ts';
import { shapeValues } from './values/the-whole-shape.ts';
import { voltsValues } from './values/volts-and-watts.ts';
import { statedValues } from './values/what-a-tolerance-says.ts';
import { madeValues } from './values/what-a-watt-is-made-of.ts';
import { backValues } from './values/what-comes-back.ts';
import { spendValues } from './values/where-to-spend.ts';
import { powerValues } from './values/which-power.ts';
import { worstValues } from './values/worst-case.ts';
import { writingValues } from './values/writing-it-down.ts';

type Values = Readonly<Record<string, () => string>>;

/** Every number that a lesson's prose may show, by group and name: made when a page asks, never typed. */
const groups: Readonly<Record<string, () => Values>> = {
  bands: bandsValues,
  levels: levelsValues,
  ratios: ratiosValues,
  rules: rulesValues,
  inline: inLineValues,
  heat: heatValues,
  meter: meterValues,
  chain: chainValues,
  stated: statedValues,
  worst: worstValues,
  angles: anglesValues,
  blocks: blocksValues,
  made: madeValues,
  power: powerValues,
  line: lineValues,
  trace: voltsValues,
  shape: shapeValues,
  shared: sharedValues,
  joined: joinedValues,
  verdict: verdictValues,
  pads: padsValues,
  scope: scopeValues,
  back: backValues,
  detector: detectorValues,
  tries: triesValues,
  spend: spendValues,
  writing: writingValues,
  borrowed: borrowedValues,
  readings: readingsValues,
};

/** Ids of every number. */
export const valueIds = (): readonly string[] =>
  Object.entries(groups).flatMap(([group, values]) =>
    Object.keys(values()).map((name) => `${group}.${name}`),
  );

/**
 * The text of one number: `chain.level`.
 * @throws RangeError for an id that no group has: the build then fails with the id in its message.
 */
export function textOfValue(id: string): string {
  const [group = '', name = ''] = id.split('.');
  const values = Object.hasOwn(groups, group) ? groups[group]?.() : undefined;
  const value = values && Object.hasOwn(values, name) ? values[name] : undefined;
  if (value === undefined)
    throw new RangeError(`textOfValue: no value has the id, got ${JSON.stringify(id)}`);
  return value();
}

import { ohms, peakOfRms, powerToLevel, voltsOfPower } from '#compute';
import {
  DETECTOR_PARTS,
  type DetectorReason,
  detectedLevel,
  detectorFound,
  detectorParts,
  forgottenDb,
} from '../../sheet/detector.ts';
import { upperPower } from '../../sheet/found.ts';
import { aloud } from '../../text/aloud.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { powerText } from '../../text/power-text.ts';
import { changeText, levelText, percentText, quantityText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import { toldApart } from '../../text/told-apart.ts';
import type { Answer } from '../parts/answer.ts';
import { levelAnswers, noAnswers, type PartRow, partRows, summariseLevel } from '../parts/method-words.ts';
import { type DetectorState, useOf } from './spec.ts';
import { strings } from './strings.ts';

/** Why there is no number, in one sentence, and what to change so that there is one. */
function noneText(style: Style, reason: DetectorReason): { why: string; help: string } {
  const { why, help } = strings;
  switch (reason.code) {
    case 'vagueVolts':
      return {
        why: why[reason.code](percentText(style, { percent: reason.percent, decimals: 0 })),
        help: help[reason.code],
      };
    case 'belowDetector': {
      const text = (powerW: number, more: number): string => powerText(style, { powerW, digits: 2 + more });
      const [power, least] = toldApart((more) => [text(reason.power, more), text(reason.least, more)]);
      return { why: why[reason.code]({ power, least }), help: help[reason.code] };
    }
  }
}

/** Power, worst case, the part that decides, and what forgetting the drop would do; or why there is no number. */
export function answersOf(
  state: DetectorState,
  style: Style = 'shown',
): readonly [Answer, Answer, Answer, ...Answer[]] {
  const use = useOf(state);
  const found = detectorFound(use);
  if (!found.inRange) return noAnswers(noneText(style, found.reason));
  const error = changeText(style, { value: forgottenDb(use), decimals: 2, unit: 'dB' });
  const wrong = levelText(style, { levelDbm: detectedLevel(use, false), decimals: 2 });
  return [
    ...levelAnswers(style, found.result, strings.parts),
    { figure: strings.forgotten(error), words: strings.forgottenWords(wrong) },
  ];
}

/** The table of parts. */
export function partsOf(state: DetectorState): readonly PartRow[] {
  const use = useOf(state);
  const stated = detectorParts(use);
  const parts = DETECTOR_PARTS.map((id) => {
    const part = stated.find((of) => of.id === id);
    if (part?.statement.form !== 'limits') throw new RangeError(`partsOf: ${id} must have limits, got none`);
    const { halfWidth } = part.statement;
    return { id, name: strings.parts[id], stated: statedText(part.unit, halfWidth) };
  });
  return partRows(detectorFound(use), parts);
}

function statedText(unit: string, halfWidth: number): string {
  if (unit === 'volts') return plusMinusText('shown', { halfWidth, decimals: 2, unit: 'V' });
  if (unit === 'dB') return plusMinusText('shown', { halfWidth, decimals: 2, unit: 'dB' });
  return strings.ofResistance(plusMinusText('shown', { halfWidth, decimals: 1, unit: 'percent' }));
}

/** What load and diode, and whoever touches them, have to reckon with. */
export function cautionText(state: DetectorState): string {
  const power = upperPower(detectorFound(useOf(state)));
  const volts = voltsOfPower({ power, resistance: ohms(state.load) });
  return strings.caution({
    level: levelText('shown', { levelDbm: powerToLevel(power), decimals: 1 }),
    heat: powerText('shown', { powerW: power, digits: 3 }),
    volts: quantityText('shown', { value: volts, decimals: 2, unit: 'Vrms' }),
    ohms: quantityText('shown', { value: state.load, decimals: 1, unit: 'ohm' }),
    reverse: quantityText('shown', { value: 2 * peakOfRms(volts), decimals: 1, unit: 'V' }),
  });
}

/** The settled state in one spoken sentence. */
export function summarise(state: DetectorState): string {
  const answers = answersOf(state, 'spoken');
  if (!detectorFound(useOf(state)).inRange) return aloud([answers[0].figure, answers[0].words]);
  return summariseLevel(answers);
}

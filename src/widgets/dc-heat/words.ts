import { heatResult, isSteady, offDb, offK, reached } from '../../sheet/dc-heat.ts';
import { aloud } from '../../text/aloud.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { powerText } from '../../text/power-text.ts';
import { changeText, percentText, quantityText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { Answer } from '../parts/answer.ts';
import { largestParts, methodLevel } from '../parts/level-words.ts';
import { type HeatState, heatOf } from './spec.ts';
import { strings } from './strings.ts';

const kelvin = (style: Style, value: number): string =>
  quantityText(style, { value, decimals: 2, unit: 'K' });
const percent = (style: Style, share: number): string =>
  percentText(style, { percent: 100 * share, decimals: 1 });

function resultAnswer(style: Style, state: HeatState): Answer {
  const use = heatOf(state);
  if (!isSteady(use))
    return {
      figure: strings.none,
      words: strings.noneWords({
        off: kelvin(style, offK(use)),
        within: plusMinusText(style, { halfWidth: use.withinK, decimals: 2, unit: 'K' }),
      }),
    };
  const result = heatResult(use);
  const { figure, words } = methodLevel(style, result);
  const { ids, share } = largestParts(result);
  return {
    figure,
    words: strings.found({
      watts: words,
      ids,
      share: percent(style, share),
    }),
  };
}

function waitAnswer(style: Style, state: HeatState): Answer {
  const use = heatOf(state);
  const { timeConstant, waitedRf, waitedDc } = use;
  return {
    figure: strings.off(changeText(style, { value: offDb(use), decimals: 2, unit: 'dB' })),
    words: strings.offWords({
      rf: percent(style, reached({ minutes: waitedRf, timeConstant })),
      dc: percent(style, reached({ minutes: waitedDc, timeConstant })),
    }),
  };
}

function dcAnswer(style: Style, state: HeatState): Answer {
  const { volts, amperes } = heatOf(state);
  return {
    figure: strings.dc(powerText(style, { powerW: volts * amperes, digits: 3 })),
    words: strings.dcWords({
      volts: quantityText(style, { value: volts, decimals: 2, unit: 'V' }),
      amperes: quantityText(style, { value: 1000 * amperes, decimals: 1, unit: 'mA' }),
      ohms: quantityText(style, { value: volts / amperes, decimals: 1, unit: 'ohm' }),
    }),
  };
}

/** The result, what waiting and the room do to it, and the direct current that it hangs on. */
export const answersOf = (state: HeatState, style: Style = 'shown'): readonly [Answer, Answer, Answer] => [
  resultAnswer(style, state),
  waitAnswer(style, state),
  dcAnswer(style, state),
];

/** The settled state in one spoken sentence. */
export function summarise(state: HeatState): string {
  const [result, off, dc] = answersOf(state, 'spoken');
  return aloud([
    result.figure,
    result.figure === strings.none ? result.words : '',
    strings.spoken.off(off.figure),
    strings.spoken.dc(dc.figure),
  ]);
}

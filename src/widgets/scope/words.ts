import { ohms, powerToLevel, voltsOfPower } from '#compute';
import { upperPower } from '../../sheet/found.ts';
import {
  bandwidthOf,
  edgeHz,
  LARGEST_SHARE_OF_BANDWIDTH,
  rollOffDb,
  SCOPE_PARTS,
  type ScopePart,
  type ScopeReason,
  type ScopeUse,
  scopeFound,
  scopeParts,
} from '../../sheet/scope.ts';
import { aloud } from '../../text/aloud.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { powerText } from '../../text/power-text.ts';
import { dbText, levelText, numberText, percentText, quantityText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import { toldApart } from '../../text/told-apart.ts';
import type { Answer } from '../parts/answer.ts';
import { levelAnswers, noAnswers, type PartRow, partRows, summariseLevel } from '../parts/method-words.ts';
import { type ScopeState, useOf } from './spec.ts';
import { strings } from './strings.ts';

const ohmsText = (style: Style, value: number): string =>
  quantityText(style, { value, decimals: 1, unit: 'ohm' });

/** Why there is no number, in one sentence. */
function whyText(style: Style, reason: ScopeReason, use: ScopeUse): string {
  switch (reason.code) {
    case 'offScreen':
      return strings.why.offScreen(quantityText(style, { value: reason.screenV, decimals: 1, unit: 'V' }));
    case 'lowOnScreen':
      return strings.why.lowOnScreen(percentText(style, { percent: reason.percent, decimals: 0 }));
    case 'twoLoads':
      return strings.why.twoLoads(ohmsText(style, reason.togetherOhm));
    case 'noTermination':
      return strings.why.noTermination;
    default: {
      const text = (value: number, more: number): string => numberText(style, { value, decimals: 2 + more });
      const [share, largest] = toldApart((more) => [
        text(use.frequencyHz / bandwidthOf(use), more),
        text(LARGEST_SHARE_OF_BANDWIDTH, more),
      ]);
      return strings.why.aboveBandwidth({ share, largest });
    }
  }
}

/** What to change so that there is one. */
function helpText(style: Style, reason: ScopeReason, { frequencyHz }: ScopeUse): string {
  const { help } = strings;
  switch (reason.code) {
    case 'offScreen':
    case 'lowOnScreen':
    case 'twoLoads':
    case 'noTermination':
      return help[reason.code];
    default: {
      const needed = frequencyHz / LARGEST_SHARE_OF_BANDWIDTH / 1e6;
      const decimals = needed < 100 ? 1 : 0;
      // Rounded up, so that what is said does help; what is whole but for rounding stays.
      const value = Math.ceil(needed * 10 ** decimals - 1e-9) / 10 ** decimals;
      return help.aboveBandwidth(quantityText(style, { value, decimals, unit: 'MHz' }));
    }
  }
}

/** Power, worst case, and the part that decides; or why there is none of them. */
export function answersOf(state: ScopeState, style: Style = 'shown'): readonly [Answer, Answer, Answer] {
  const use = useOf(state);
  const found = scopeFound(use);
  if (!found.inRange) {
    const { reason } = found;
    return noAnswers({ why: whyText(style, reason, use), help: helpText(style, reason, use) });
  }
  return levelAnswers(style, found.result, strings.parts);
}

const limitsText = (upper: number): string => strings.upTo(dbText('shown', { db: upper, decimals: 2 }));

/** What is stated of a part, in its own unit; of the roll-off nothing where the method does not hold. */
function statedText(id: ScopePart, use: ScopeUse): string {
  if (id === 'rollOff') return use.frequencyHz > edgeHz(use) ? strings.unknown : limitsText(rollOffDb(use));
  const part = scopeParts(use).find((of) => of.id === id);
  if (part?.statement.form === 'asymmetric') return limitsText(part.statement.upper);
  if (part?.statement.form !== 'limits') throw new RangeError(`statedText: ${id} must have limits, got none`);
  const { halfWidth } = part.statement;
  const amount = (decimals: number, unit: 'percent' | 'Vpp' | 'dB') =>
    plusMinusText('shown', { halfWidth, decimals, unit });
  switch (part.unit) {
    case 'percentOfVolts':
      return strings.ofVolts(amount(1, 'percent'));
    case 'percentOfResistance':
      return strings.ofResistance(amount(1, 'percent'));
    case 'voltsPeakToPeak':
      return amount(2, 'Vpp');
    default:
      return amount(2, 'dB');
  }
}

/** The table of parts. */
export function partsOf(state: ScopeState): readonly PartRow[] {
  const use = useOf(state);
  const parts = SCOPE_PARTS.map((id) => ({ id, name: strings.parts[id], stated: statedText(id, use) }));
  return partRows(scopeFound(use), parts);
}

/** What the load, and whoever touches it, have to reckon with. */
export function cautionText(state: ScopeState): string {
  const power = upperPower(scopeFound(useOf(state)));
  const volts = voltsOfPower({ power, resistance: ohms(state.load) });
  return strings.cautions[state.end]({
    level: levelText('shown', { levelDbm: powerToLevel(power), decimals: 1 }),
    heat: powerText('shown', { powerW: power, digits: 3 }),
    volts: quantityText('shown', { value: volts, decimals: 2, unit: 'Vrms' }),
    ohms: quantityText('shown', { value: state.load, decimals: 1, unit: 'ohm' }),
  });
}

/** The settled state in one spoken sentence. */
export function summarise(state: ScopeState): string {
  const answers = answersOf(state, 'spoken');
  const [{ figure, words }] = answers;
  if (!scopeFound(useOf(state)).inRange) return aloud([figure, words]);
  return summariseLevel(answers);
}

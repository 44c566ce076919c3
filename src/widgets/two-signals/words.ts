import { levelDbm, levelToPower, levelToVolts, ohms } from '#compute';
import { aloud } from '../../text/aloud.ts';
import { powerText } from '../../text/power-text.ts';
import { levelText, quantityText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { NamedAnswer } from '../parts/answer.ts';
import type { SignalsState } from './spec.ts';
import { strings } from './strings.ts';
import { LOAD_OHM, sumsOf } from './sums.ts';

export const levelWords = (style: Style, dbm: number): string =>
  levelText(style, { levelDbm: dbm, decimals: 1 });
const powerWords = (style: Style, dbm: number): string =>
  powerText(style, { powerW: levelToPower(levelDbm(dbm)), digits: 3 });
const voltsWords = (style: Style, dbm: number): string =>
  quantityText(style, {
    value: levelToVolts({ level: levelDbm(dbm), resistance: ohms(LOAD_OHM) }),
    decimals: 2,
    unit: 'Vrms',
  });

/** The two signals added as powers and as volts, and what adding the dBm would claim where that is shown. */
export function answersOf(state: SignalsState, style: Style = 'shown'): readonly NamedAnswer[] {
  const { unrelatedDbm, coherentDbm, inPhaseDbm, againstDbm, claimedDbm } = sumsOf(state);
  const unrelated = {
    id: 'unrelated',
    figure: strings.unrelated(levelWords(style, unrelatedDbm)),
    words: strings.unrelatedWords(powerWords(style, unrelatedDbm)),
  };
  const worst = againstDbm === undefined ? strings.nothing : levelWords(style, againstDbm);
  const coherent =
    coherentDbm === undefined
      ? { id: 'coherent', figure: strings.cancel, words: strings.cancelWords }
      : {
          id: 'coherent',
          figure: strings.coherent(levelWords(style, coherentDbm)),
          words: strings.coherentWords({
            volts: voltsWords(style, coherentDbm),
            worst,
            best: levelWords(style, inPhaseDbm),
          }),
        };
  if (state.claim === 'none') return [unrelated, coherent];
  const there = powerWords(style, unrelatedDbm);
  const claimed = {
    id: 'claimed',
    figure: strings.claimedFigure(levelWords(style, claimedDbm)),
    words: strings.claimedWords({ claimed: powerWords(style, claimedDbm), there }),
  };
  return [unrelated, coherent, claimed];
}

/** The settled state in one spoken sentence. */
export const summarise = (state: SignalsState): string =>
  aloud(answersOf(state, 'spoken').map(({ figure, words }) => `${figure}: ${words}`));

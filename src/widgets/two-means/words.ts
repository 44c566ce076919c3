import { levelDbm, levelToPower } from '#compute';
import { aloud } from '../../text/aloud.ts';
import { powerText } from '../../text/power-text.ts';
import { dbText, levelText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { NamedAnswer } from '../parts/answer.ts';
import { meansOf } from './means.ts';
import type { MeansState } from './spec.ts';
import { strings } from './strings.ts';

const DECIMALS = 2;
/** A mean to a hundredth: the two means are often no farther apart. */
const meanText = (style: Style, dbm: number): string =>
  levelText(style, { levelDbm: dbm, decimals: DECIMALS });
const power = (style: Style, dbm: number): string =>
  powerText(style, { powerW: levelToPower(levelDbm(dbm)), digits: 3 });
const db = (style: Style, value: number): string => dbText(style, { db: value, decimals: DECIMALS });

/** Both means and how far they are apart. */
export function answersOf(state: MeansState, style: Style = 'shown'): readonly NamedAnswer[] {
  const { ofDecibelsDbm, ofPowersDbm, apartDb, ruleDb, scatterDb } = meansOf(state);
  return [
    {
      id: 'decibels',
      figure: strings.decibels(meanText(style, ofDecibelsDbm)),
      words: strings.decibelsWords(power(style, ofDecibelsDbm)),
    },
    {
      id: 'powers',
      figure: strings.powers(meanText(style, ofPowersDbm)),
      words: strings.powersWords(power(style, ofPowersDbm)),
    },
    {
      id: 'apart',
      figure: strings.apart(db(style, apartDb)),
      words: strings.apartWords({ rule: db(style, ruleDb), scatter: db(style, scatterDb) }),
    },
  ];
}

/** The settled state in one spoken sentence. */
export const summarise = (state: MeansState): string =>
  aloud(answersOf(state, 'spoken').map(({ figure, words }) => `${figure}: ${words}`));

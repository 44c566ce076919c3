import type { Propagation } from '#compute';
import { changeText, dbText, numberText, percentText } from '../text/quantity-text.ts';
import { type Calibration, correctionAt, found } from './calibration.ts';
import { placeText } from './place-text.ts';
import { resultStrings as strings } from './result-strings.ts';
import { bandText, placesOf } from './result-words.ts';

/** One line of the table of places; texts as shown. */
export interface PlaceLine {
  readonly id: string;
  readonly at: string;
  readonly rounds: string;
  readonly correction: string;
  readonly expanded: string;
  readonly line: string | undefined;
  readonly lineExpanded: string | undefined;
  readonly ratio: string | undefined;
}

/** Place by place: what its own readings say, and what the line says there. */
export function placeLines(calibration: Calibration): readonly PlaceLine[] {
  const { places, line, checked } = calibration;
  return places.map((place) => {
    const read = line && found(correctionAt(calibration, place.at));
    const change = (value: number, of: Propagation): string =>
      changeText('shown', { value, decimals: placesOf(of), unit: 'dB' });
    return {
      id: place.id,
      at: placeText(checked.along, place.at),
      rounds: String(place.rounds.length),
      correction: change(place.value, place.propagation),
      expanded: bandText('shown', place.propagation),
      line: read && change(read.value, read.propagation),
      lineExpanded: read && bandText('shown', read.propagation),
      ratio: place.agreement && numberText('shown', { value: place.agreement.normalisedError, decimals: 2 }),
    };
  });
}

/** One line of a budget. */
export interface BudgetLine {
  readonly id: string;
  readonly label: string;
  readonly uncertainty: string;
  readonly share: string;
  readonly shareOf: number;
}

/** Decimals of a standard uncertainty in a budget. */
const BUDGET_DECIMALS = 3;

/** What makes a value uncertain, the largest share first. */
export const budgetLines = ({ budget }: Propagation): readonly BudgetLine[] =>
  budget
    .toSorted((a, b) => b.share - a.share)
    .map(({ id, contribution, share }) => ({
      id,
      label: strings.inputs[id] ?? id,
      uncertainty: dbText('shown', { db: contribution, decimals: BUDGET_DECIMALS }),
      // what cancels another part has a negative one
      share: percentText('shown', { percent: 100 * share, decimals: 0 }),
      shareOf: share,
    }));

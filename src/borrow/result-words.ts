import type { Propagation } from '#compute';
import { answersAloud } from '../text/answers-aloud.ts';
import { plusMinusText } from '../text/deviation-text.ts';
import { decimalsFor } from '../text/place.ts';
import { changeText, dbText, levelText, numberText, percentText } from '../text/quantity-text.ts';
import type { Style } from '../text/style.ts';
import type { Answer } from '../widgets/parts/answer.ts';
import { type Calibration, correctionAt, type Found, found } from './calibration.ts';
import { IDS } from './inputs.ts';
import { placeText } from './place-text.ts';
import { resultStrings as strings } from './result-strings.ts';

/** Decimals where nothing makes a value uncertain. */
const EXACT_DECIMALS = 3;

export const placesOf = ({ expanded }: Pick<Propagation, 'expanded'>): number =>
  expanded > 0 ? decimalsFor(expanded) : EXACT_DECIMALS;

/** The band of a value: `±0.30 dB`. */
export const bandText = (style: Style, { expanded }: Pick<Propagation, 'expanded'>): string =>
  plusMinusText(style, { halfWidth: expanded, decimals: placesOf({ expanded }), unit: 'dB' });

/** Coverage factor with as many decimals as it needs: `2.00`. */
export const factorOf = (style: Style, { coverageFactor }: Propagation): string =>
  numberText(style, { value: coverageFactor, decimals: 2 });

/** A correction with its band: `−0.75 dB ±0.30 dB`. */
function correctionText(style: Style, { value, propagation }: Found): string {
  const decimals = placesOf(propagation);
  return `${changeText(style, { value, decimals, unit: 'dB' })} ${bandText(style, propagation)}`;
}

/** The correction that is shown first: of the only place, or at the middle of the line. */
export function mainCorrection(calibration: Calibration): Found & { readonly at: number } {
  const at = calibration.line?.middle ?? calibration.places[0]?.at ?? 0;
  return { ...found(correctionAt(calibration, at)), at };
}

function correctionAnswer(style: Style, calibration: Calibration): Answer {
  const { checked, places, line } = calibration;
  const main = mainCorrection(calibration);
  const k = factorOf(style, main.propagation);
  const figure = correctionText(style, main);
  const named = (at: number): string => placeText(checked.along, at, style);
  if (line === undefined) {
    const rounds = strings.rounds(places[0]?.rounds.length ?? 0);
    return { figure, words: strings.correctionWords({ k, rounds, at: named(main.at) }) };
  }
  const { lower, upper } = line.range;
  const words = { places: strings.places(places.length), from: named(lower), to: named(upper), k };
  return { figure: strings.lineAt(figure, named(main.at)), words: strings.lineWords(words) };
}

/** What of the uncertainty came with the lender's statement: no number of rounds shrinks it. */
function lenderAnswer(style: Style, calibration: Calibration): Answer {
  const { propagation } = mainCorrection(calibration);
  const row = propagation.budget.find(({ id }) => id === IDS.lender);
  const lender = 2 * (row?.contribution ?? 0);
  return {
    figure: strings.lenderShare(percentText(style, { percent: 100 * (row?.share ?? 0), decimals: 0 })),
    words: strings.lenderWords({
      lender: bandText(style, { expanded: lender }),
      whole: bandText(style, propagation),
    }),
  };
}

/** The answers under the figure. */
export function answersOf(calibration: Calibration, style: Style = 'shown'): readonly Answer[] {
  const { later, checked } = calibration;
  const first = [correctionAnswer(style, calibration), lenderAnswer(style, calibration)];
  if (later === undefined || checked.later === undefined) return first;
  const decimals = placesOf(later.propagation);
  const shown = levelText(style, { levelDbm: checked.later.reading, decimals });
  const figure = `${levelText(style, { levelDbm: later.value, decimals })} ${bandText(style, later.propagation)}`;
  return [...first, { figure, words: strings.laterWords({ shown, k: factorOf(style, later.propagation) }) }];
}

/** Scatter, drift and how well a line fits, in sentences. */
export function notesOf({ places, scatter, line, checked }: Calibration): readonly string[] {
  const s = dbText('shown', { db: scatter.standardDeviation, decimals: EXACT_DECIMALS });
  const drift = Math.max(...places.map(({ correction }) => correction.driftHalfWidth));
  const said = [
    strings.scatter({ s, degrees: strings.degrees(scatter.degreesOfFreedom) }),
    drift > 0
      ? strings.drift(plusMinusText('shown', { halfWidth: drift, decimals: 2, unit: 'dB' }))
      : strings.noDrift,
  ];
  const birge = line && numberText('shown', { value: line.birgeRatio, decimals: 1 });
  if (birge === undefined) return [...said, ...farAway({ places, checked })];
  if (places.length === 2) return [...said, strings.twoPlaces];
  return [...said, (line?.birgeRatio ?? 0) > 1 ? strings.lineScatters(birge) : strings.lineFits(birge)];
}

/** Beyond this the straightness of a scale counts. */
const NEAR_DB = 1;

function farAway({ places, checked }: Pick<Calibration, 'places' | 'checked'>): readonly string[] {
  const { later } = checked;
  const at = places[0]?.ownMean;
  if (later === undefined || at === undefined || later.linearity > 0) return [];
  const apart = Math.abs(later.reading - at);
  if (apart <= NEAR_DB) return [];
  return [
    strings.farAway({
      shown: placeText('level', later.reading),
      at: placeText('level', at),
      apart: dbText('shown', { db: apart, decimals: 1 }),
    }),
  ];
}

/** Whether one's own instrument keeps its data sheet, where it is farthest from it; undefined where no claim is given. */
export function agreementOf({ places, checked }: Calibration): string | undefined {
  const [worst] = places.toSorted((a, b) => ratioOf(b) - ratioOf(a));
  if (worst?.agreement === undefined) return undefined;
  const { agreement, at } = worst;
  const words = {
    at: placeText(checked.along, at),
    ratio: numberText('shown', { value: agreement.normalisedError, decimals: 2 }),
    difference: changeText('shown', { value: agreement.difference, decimals: 2, unit: 'dB' }),
    expanded: bandText('shown', agreement),
  };
  const said = agreement.compatible ? strings.agreement.compatible(words) : strings.agreement.not(words);
  return places.length > 1 ? `${strings.agreement.farthest} ${said}` : said;
}

const ratioOf = ({ agreement }: Calibration['places'][number]): number =>
  Math.abs(agreement?.normalisedError ?? 0);

/** The settled state in spoken sentences. */
export const summariseCalibration = (calibration: Calibration): string =>
  answersAloud(answersOf(calibration, 'spoken'));

import { type Caution, gainDb, type InputLevel, type LevelDbm, levelToPower, type PadHeat } from '#compute';
import { type LinePart, levelAtEnd, lineGain, radiatedLevels } from '../../sheet/line.ts';
import { lineCautions, ratingOf } from '../../sheet/line-cautions.ts';
import { lineSlip, slipEnd } from '../../sheet/line-slips.ts';
import { aloud } from '../../text/aloud.ts';
import { powerText } from '../../text/power-text.ts';
import { changeText, dbText, levelText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { Answer } from '../parts/answer.ts';
import { type LineState, lineOf } from './spec.ts';
import { strings } from './strings.ts';

const DIGITS = 3;

export const watts = (style: Style, powerW: number): string => powerText(style, { powerW, digits: DIGITS });
export const dbm = (style: Style, levelDbm: number): string => levelText(style, { levelDbm, decimals: 1 });
/** A level with its power: `−13.1 dBm, 49.0 µW`. */
export const levelAndPower = (style: Style, level: LevelDbm, decimals = 1): string =>
  `${levelText(style, { levelDbm: level, decimals })}, ${watts(style, levelToPower(level))}`;
export const change = (style: Style, db: number, decimals = 1): string =>
  changeText(style, { value: db, decimals, unit: 'dB' });
const size = (style: Style, db: number): string => dbText(style, { db: Math.abs(db), decimals: 1 });

/** Cautions of the line of a state, or of the same line without a part. */
export const cautionsFor = (state: LineState, without?: LinePart): readonly Caution[] =>
  lineCautions({ line: lineOf(state), damageDbm: state.damage, without });

/** The heat in a part, if it takes anything away. */
export const heatIn = (cautions: readonly Caution[], id: LinePart): PadHeat | undefined =>
  cautions.find((caution): caution is PadHeat => caution.code === 'padHeat' && caution.id === id);

/** What arrives at the input with everything in place. */
export function inputOf(cautions: readonly Caution[]): InputLevel {
  const found = cautions.find(
    (caution): caution is InputLevel => caution.code === 'inputLevel' && caution.without === undefined,
  );
  if (found === undefined) throw new RangeError('inputOf: cautions must say what arrives, got none');
  return found;
}

/** How a level stands against what damages the input. */
export function againstDamage(style: Style, { margin = gainDb(0) }: InputLevel): string {
  return margin < 0 ? strings.above(size(style, margin)) : strings.below(size(style, margin));
}

/** The answers under the figure: the end of the line, its heat or its other reference, what is left out, the slip. */
export function answersOf(state: LineState, style: Style = 'shown'): readonly Answer[] {
  const own =
    state.end === 'instrument'
      ? [inputAnswer(style, state), heatAnswer(style, state), withoutAnswer(style, state)]
      : radiatedAnswers(style, state);
  return state.slip === 'none' ? own : [...own, slipAnswer(style, state, state.slip)];
}

function inputAnswer(style: Style, state: LineState): Answer {
  const line = lineOf(state);
  const input = inputOf(cautionsFor(state));
  const loss = change(style, lineGain(line));
  return {
    figure: levelAndPower(style, levelAtEnd(line)),
    words: `${strings.atInput({ loss, most: dbm(style, input.level) })}: ${againstDamage(style, input)}`,
  };
}

function heatAnswer(style: Style, state: LineState): Answer {
  const heats = cautionsFor(state).filter((caution): caution is PadHeat => caution.code === 'padHeat');
  const most = heats.reduce<PadHeat | undefined>(
    (top, heat) => (top && top.heat >= heat.heat ? top : heat),
    undefined,
  );
  if (most === undefined) return { figure: strings.noHeat, words: strings.noHeatWords };
  const part = strings.within[most.id as LinePart];
  const rated = most.rating && watts(style, most.rating.power);
  return { figure: watts(style, most.heat), words: strings.heatIn({ part, rated }) };
}

function withoutAnswer(style: Style, state: LineState): Answer {
  const { without } = state;
  if (without === 'none') return { figure: strings.nothingLeftOut, words: strings.nothingLeftOutWords };
  const cautions = cautionsFor(state, without);
  const input = inputOf(cautions);
  const hurt = cautions
    .filter((caution): caution is PadHeat => caution.code === 'padHeat' && caution.status === 'exceeded')
    .map((heat) => tooMuchIn(style, heat));
  const said = [againstDamage(style, input), ...hurt].join('; ');
  return {
    figure: strings.without({ level: dbm(style, input.level), part: strings.within[without] }),
    words: `${said}. ${strings.calculation}`,
  };
}

const tooMuchIn = (style: Style, { id, incident, rating }: PadHeat): string =>
  strings.getsTooMuch({
    part: strings.within[id as LinePart],
    power: watts(style, incident),
    rated: rating === undefined ? '' : watts(style, rating.power),
  });

function radiatedAnswers(style: Style, state: LineState): readonly Answer[] {
  const { eirp, erp } = radiatedLevels(lineOf(state));
  const step = dbText(style, { db: eirp - erp, decimals: 2 });
  return [
    { figure: `${levelAndPower(style, eirp, 2)} EIRP`, words: strings.radiated.eirp },
    { figure: `${levelAndPower(style, erp, 2)} ERP`, words: strings.radiated.erp(step) },
  ];
}

function slipAnswer(style: Style, state: LineState, slip: Exclude<LineState['slip'], 'none'>): Answer {
  const name = strings.slips[slip];
  if (slipEnd(slip) !== state.end) return { figure: name, words: strings.otherEnd };
  const { stated, error } = lineSlip(slip, lineOf(state));
  return {
    figure: strings.stated(levelAndPower(style, stated, slip === 'reference' ? 2 : 1)),
    words: strings.off({ slip: name, error: change(style, error, slip === 'reference' ? 2 : 1) }),
  };
}

/** The settled state in one spoken sentence. */
export const summarise = (state: LineState): string =>
  aloud(
    answersOf(state, 'spoken')
      .filter(({ figure }) => figure !== strings.nothingLeftOut)
      // "of heat at most …" goes on with the number before it
      .map(({ figure, words }) => (/^of /.test(words) ? `${figure} ${words}` : `${figure}, ${words}`)),
  );

/** What may go into a part, as text; a dash where nothing is stated. */
export function ratedText(id: LinePart): string {
  const rating = ratingOf(id);
  return rating === undefined ? strings.none : watts('shown', rating.power);
}

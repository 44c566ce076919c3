import {
  coherentSum,
  dbToPowerRatio,
  gainDb,
  type LevelDbm,
  levelDbm,
  levelToPower,
  sumOfLevels,
} from '#compute';
import type { Tile } from '../../figures/tile-line.layout.ts';
import { aloud } from '../../text/aloud.ts';
import { factorText } from '../../text/factor-text.ts';
import { powerText } from '../../text/power-text.ts';
import { changeText, levelText, numberText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { NamedAnswer } from '../parts/answer.ts';
import { type Meaning, meaningOf, runningMeanings } from './meaning.ts';
import { type TileValue, VALUE } from './spec.ts';
import type { PlacedTile } from './state.ts';
import { strings } from './strings.ts';

const DIGITS = 3;
/** Beyond this many dBm a claimed power is no number that anybody reads. */
const MOST_SAID_DBM = 120;
const power = (style: Style, level: number): string =>
  powerText(style, { powerW: levelToPower(levelDbm(level)), digits: DIGITS });
const level = (style: Style, dbm: number): string =>
  levelText(style, { levelDbm: dbm, decimals: VALUE.decimals });

/** What a line comes to, in a few letters: `7.0 dBm`, `−26.0 dB`, or that it means nothing. */
export function meaningText(style: Style, meaning: Meaning): string {
  switch (meaning.kind) {
    case 'level':
      return level(style, meaning.levelDbm);
    case 'gain':
      return changeText(style, { value: meaning.gainDb, decimals: VALUE.decimals, unit: 'dB' });
    case 'nothing':
      return strings.nothing;
  }
}

/** Number and unit of a tile, or of what the line comes to, apart: they stand on lines of their own. */
function parts(meaning: Meaning): Tile['running'] {
  if (meaning.kind === 'nothing') return undefined;
  const [number = '', unit = ''] = meaningText('shown', meaning).split('\u00a0');
  return { number, unit };
}

/** The tiles as the figure draws them. */
export function tilesOf(tiles: readonly PlacedTile[]): readonly Tile[] {
  const running = runningMeanings(tiles);
  return tiles.map(({ id, kind, value }, index) => {
    const gain = kind === 'gain';
    const word = gain ? (value < 0 ? strings.words.loss : strings.words.gain) : strings.words[kind];
    const number = numberText('shown', { value, decimals: Number.isInteger(value) ? 0 : VALUE.decimals });
    return {
      id,
      word,
      number: gain && value > 0 ? `+${number}` : number,
      unit: gain ? 'dB' : 'dBm',
      shape: gain ? 'gain' : 'level',
      running: parts(running[index] ?? meaningOf([])),
    };
  });
}

/** What the line comes to, why it means nothing where it does, and what may have been meant. */
export function answersOf(tiles: readonly TileValue[], style: Style = 'shown'): readonly NamedAnswer[] {
  if (tiles.length === 0) return [{ id: 'none', figure: strings.noTiles, words: strings.noTilesWords }];
  const meaning = meaningOf(tiles);
  if (meaning.kind === 'nothing') return nothingAnswers(meaning, tiles, style);
  const figure = meaningText(style, meaning);
  if (meaning.kind === 'level')
    return [{ id: 'level', figure, words: strings.levelWords(power(style, meaning.levelDbm)) }];
  const factor = factorText(style, { ratio: dbToPowerRatio(gainDb(meaning.gainDb)), digits: DIGITS });
  const words = tiles.some(({ kind }) => kind === 'less')
    ? strings.differenceWords(factor)
    : strings.ratioWords(factor);
  return [{ id: 'gain', figure, words }];
}

function nothingAnswers(
  { milliwatts, sum }: Extract<Meaning, { kind: 'nothing' }>,
  tiles: readonly TileValue[],
  style: Style,
): readonly NamedAnswer[] {
  const figure = strings.meansNothing;
  if (milliwatts < 0) return [{ id: 'nothing', figure, words: strings.divided }];
  const words =
    Math.abs(sum) > MOST_SAID_DBM
      ? strings.tooMuch
      : strings.multiplied({ power: power(style, sum), milliwatts: strings.squared(milliwatts) });
  const together = togetherWords(tiles, style);
  const nothing = { id: 'nothing', figure, words };
  return together === undefined
    ? [nothing]
    : [nothing, { id: 'instead', figure: strings.instead, words: together }];
}

/** The levels of a line of levels alone as signals in one load; with gains among them nobody knows which signal they belong to. */
function togetherWords(tiles: readonly TileValue[], style: Style): string | undefined {
  if (tiles.some(({ kind }) => kind !== 'level')) return undefined;
  const levels: readonly LevelDbm[] = tiles.map(({ value }) => levelDbm(value));
  return strings.insteadWords({
    unrelated: level(style, sumOfLevels(levels)),
    inPhase: level(style, coherentSum(levels.map((each) => ({ level: each, phaseDegrees: 0 })))),
  });
}

/** The settled state in one spoken sentence. */
export const summarise = (tiles: readonly TileValue[]): string =>
  aloud(answersOf(tiles, 'spoken').map(({ figure, words }) => `${figure}: ${words}`));

import { bandChainOf } from '../sheet/chain.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { decimalsFor } from '../text/place.ts';
import { powerIntervalText } from '../text/power-text.ts';
import { statementText } from '../text/statement-text.ts';
import type { Known, Step } from './example.ts';
import { formula, level, num, sides, wattsOf } from './said.ts';
import { readingOf } from './sheet-of.ts';
import { wattsOfLevel } from './watts.ts';

/** What is stated of each link of a chain, with its loss where it has one. */
export const linksKnown = (sheet: Sheet): readonly Known[] =>
  sheet.links.map(({ label, lossDb, statement, unit }) => ({
    what: label,
    value: (style) => {
      const limits = statementText(style, { statement, unit });
      return lossDb === 0 ? limits : `${num(style, lossDb, 1, 'dB')} ${limits}`;
    },
  }));

/** The first step of a chain with losses: from the reading back to the socket. */
export function addBackStep(sheet: Sheet, words: string): Step {
  const losses = sheet.links.filter(({ lossDb }) => lossDb !== 0);
  const { estimate } = bandChainOf(sheet).result;
  return {
    id: 'add-back',
    title: 'Add back what the line takes',
    formula: formula((style) => {
      const parts = [
        level(style, readingOf(sheet), 1),
        ...losses.map(({ lossDb }) => num(style, lossDb, 1, 'dB')),
      ];
      return `L = ${parts.join(' + ')} = ${level(style, estimate, 1)}`;
    }),
    words,
  };
}

/** Less than this is beneath what anybody writes down, in dB. */
const LEAST_SHIFT_DB = 0.001;

/** Whether the sum holds for the numbers as they are written. */
function addsUp(bare: number, shift: number, decimals: number): boolean {
  const written = (value: number): number => Math.round(value * 10 ** decimals);
  return written(bare) + written(shift) === written(bare + shift);
}

/** Limits that are even in percent are lopsided in decibels: their middle is then a little lower. */
function middleStep(bare: number, estimate: number): readonly Step[] {
  const shift = estimate - bare;
  if (Math.abs(shift) < LEAST_SHIFT_DB) return [];
  const fewest = Math.abs(shift) < 0.01 ? 3 : 2;
  const decimals = [fewest, fewest + 1, fewest + 2].find((places) => addsUp(bare, shift, places)) ?? fewest;
  const sign = shift < 0 ? ' − ' : ' + ';
  return [
    {
      id: 'middle',
      title: 'The middle of what it may be',
      formula: formula(
        (style) =>
          `${level(style, bare, decimals)}${sign}${num(style, Math.abs(shift), decimals, 'dB')} = ${level(style, estimate, decimals)}`,
      ),
      words:
        'Limits that are even in percent reach farther down than up in decibels, so the mean of the distribution lies a little below what was read.',
    },
  ];
}

/** The last steps of every chain: how its parts add up in decibels, both ways, and what that is in watts. */
export function chainSteps(sheet: Sheet): readonly Step[] {
  const { result } = bandChainOf(sheet);
  const { propagation, worstCase, estimate } = result;
  const bare = readingOf(sheet) + sheet.links.reduce((sum, { lossDb }) => sum + lossDb, 0);
  const parts = propagation.budget.filter(({ contribution }) => contribution > 0);
  return [
    ...middleStep(bare, estimate),
    ...(parts.length === 0
      ? []
      : [
          {
            id: 'together',
            title: 'What the parts come to together',
            formula: formula((style) => {
              const squares = parts.map((row) => `${num(style, row.contribution, 3, 'none')}²`).join(' + ');
              const { standardUncertainty: u, expanded, coverageFactor } = propagation;
              const k = num(style, coverageFactor, 2, 'none');
              const decimals = decimalsFor(expanded);
              return `u = √(${squares}) dB = ${num(style, u, 3, 'dB')}; U = ${k} × u = ${num(style, expanded, decimals, 'dB')}`;
            }),
            words:
              'Each part’s limits are divided to a standard uncertainty first (by √3 where nothing more is known, by √2 where two waves meet at an unknown phase); the squares add.',
          },
        ]),
    {
      id: 'worst-case',
      title: 'If everything were off the same way',
      formula: formula((style) => {
        const { lower, upper } = worstCase.interval;
        return `${sides(style, { lower: lower - bare, upper: upper - bare })} about ${level(style, bare)}`;
      }),
      words:
        worstCase.unlimited.length === 0
          ? 'The limits added up: a guarantee, if each of them is one.'
          : 'The limits added up; but a part without a limit is among them, so this guarantees nothing.',
    },
    {
      id: 'in-watts',
      title: 'In watts, end by end',
      formula: formula((style) => {
        const { lower, upper } = propagation.interval;
        const ends = powerIntervalText(style, { lowerW: wattsOfLevel(lower), upperW: wattsOfLevel(upper) });
        return `${level(style, estimate)} = ${wattsOf(style, estimate)}; ${level(style, lower)} to ${level(style, upper)} = ${ends}`;
      }),
      words:
        'The band is even in decibels and lopsided in watts, so each end is turned into watts by itself.',
    },
  ];
}

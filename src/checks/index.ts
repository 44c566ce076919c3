import { cable } from './cable.ts';
import type { Chapter } from './check.ts';
import { commonPractice } from './common-practice.ts';
import { comparison } from './comparison.ts';
import { decibelTables } from './decibel-tables.ts';
import { decibelUnits } from './decibel-units.ts';
import { thermalExpansion } from './expansion.ts';
import { gum } from './gum.ts';
import { ilacG8 } from './ilac.ts';
import { jcgm101 } from './jcgm101.ts';
import { jcgm106 } from './jcgm106.ts';
import { mismatch } from './mismatch.ts';
import { oscilloscopes } from './oscilloscope.ts';
import { percentTables } from './percent.ts';
import { si } from './si.ts';
import { strd } from './strd.ts';
import { studentAndChiSquare } from './student-chi.ts';
import { swr } from './swr.ts';

let all: readonly Chapter[] | undefined;

/** Every published worked example that this site is checked against, by chapter; one list, made when first asked for. */
export function chapters(): readonly Chapter[] {
  all ??= listed();
  return all;
}

function listed(): readonly Chapter[] {
  return [
    {
      id: 'decibels',
      title: 'Decibels, levels and percent',
      about: 'The conversions that every chain starts from.',
      sources: [...decibelTables(), ...decibelUnits(), ...percentTables(), commonPractice()],
    },
    {
      id: 'gum',
      title: 'Combining uncertainties: the Guide',
      about:
        'What the examples of the GUM come to, from one statement on a certificate to correlated results.',
      sources: gum(),
    },
    {
      id: 'distributions',
      title: 'The whole distribution: Supplement 1',
      about: 'Where the law of propagation is not enough, and what the distributions really come to.',
      sources: jcgm101(),
    },
    {
      id: 'conformity',
      title: 'Inside, outside, or can’t tell',
      about: 'Probabilities of conformity and what a guard band leaves as risk.',
      sources: [jcgm106(), ilacG8()],
    },
    {
      id: 'reflections',
      title: 'Reflections and mismatch',
      about: 'What a connection that is not perfect reflects, costs and leaves in doubt.',
      sources: [...swr(), mismatch()],
    },
    {
      id: 'instruments',
      title: 'Instruments',
      about: 'How much an oscilloscope shows of a sine, and what a cable loses.',
      sources: [...oscilloscopes(), cable()],
    },
    {
      id: 'units',
      title: 'Units and lengths',
      about: 'From the definition of a unit down to a warm piece of steel.',
      sources: [...si(), ...thermalExpansion()],
    },
    {
      id: 'statistics',
      title: 'Statistics',
      about: 'Quantiles and data sets with certified results.',
      sources: [...studentAndChiSquare(), strd(), comparison()],
    },
  ];
}

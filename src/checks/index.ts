import type { Chapter } from './check.ts';
import { decibelTables } from './decibel-tables.ts';
import { decibelUnits } from './decibel-units.ts';
import { gum } from './gum.ts';
import { ilacG8 } from './ilac.ts';
import { jcgm106 } from './jcgm106.ts';
import { percentTables } from './percent.ts';

/** Every published worked example that this site is checked against, by chapter. */
export function chapters(): readonly Chapter[] {
  return [
    {
      id: 'decibels',
      title: 'Decibels, levels and percent',
      about: 'The conversions that every chain starts from.',
      sources: [...decibelTables(), ...decibelUnits(), ...percentTables()],
    },
    {
      id: 'gum',
      title: 'Combining uncertainties: the Guide',
      about:
        'What the examples of the GUM come to, from one statement on a certificate to correlated results.',
      sources: gum(),
    },
    {
      id: 'conformity',
      title: 'Inside, outside, or can’t tell',
      about: 'Probabilities of conformity and what a guard band leaves as risk.',
      sources: [jcgm106(), ilacG8()],
    },
  ];
}

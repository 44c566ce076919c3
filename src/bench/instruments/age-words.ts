import { ageOf } from '../../instruments/age.ts';
import type { Day } from '../../instruments/day.ts';
import { ageStrings as strings } from './age-strings.ts';

/** How old a calibration is, in words. */
export interface AgeWords {
  readonly text: string;
  /** Whether it no longer stands, or cannot be right. */
  readonly warns: boolean;
}

/** A sentence on the calibration of an instrument on a day; undefined where no day of calibration is given. */
export function ageWords(
  dated: { readonly calibrated: string; readonly interval: string },
  on: Day,
): AgeWords | undefined {
  const age = ageOf(dated, on);
  switch (age.state) {
    case 'undated':
      return undefined;
    case 'later':
      return { text: strings.later(age), warns: true };
    case 'open':
      return { text: strings.open(age.calibrated), warns: false };
    case 'stands':
      return { text: strings.stands(age), warns: false };
    case 'old':
      return { text: strings.old({ ...age, on }), warns: true };
  }
}

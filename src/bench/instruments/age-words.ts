import { ageOf, yearsSince } from '../../instruments/age.ts';
import type { Day } from '../../instruments/day.ts';
import type { LinkEntries } from '../../sheet/entries.ts';
import { numberText } from '../../text/quantity-text.ts';
import { isGood, readField } from '../../text/read/field.ts';
import { LINK_SPECS } from '../read/link-spec.ts';
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

/** Years that drift was reckoned for may be off by so much: a week. */
const SAME_YEARS = 0.02;

/** Whether drift was reckoned for so many years; a text that cannot be read was reckoned for none. */
function isFor(text: string, years: number): boolean {
  const field = readField(text, LINK_SPECS.years);
  return isGood(field) && Math.abs(years - field.value) <= SAME_YEARS;
}

const years = (value: number): string => numberText('shown', { value, decimals: 2 });

/**
 * What there is to say on a day of a link that was taken from an instrument: of its statement the age of the calibration, of drift for
 * how many years it was reckoned, with a warning where the day of use is another. Undefined where there is no day of calibration.
 */
export function linkAgeWords(
  link: Pick<LinkEntries, 'calibrated' | 'interval' | 'part' | 'form' | 'perYear' | 'years'>,
  on: Day,
): AgeWords | undefined {
  const drifts = link.part === 'drift' || (link.form === 'terms' && link.perYear.trim() !== '');
  const now = drifts ? yearsSince(link.calibrated, on) : undefined;
  const stale = now !== undefined && !isFor(link.years, now);
  const age = link.part === 'drift' ? undefined : ageWords(link, on);
  if (!stale)
    return age ?? (now === undefined ? undefined : { text: strings.years(years(now)), warns: false });
  const text = strings.staleYears({ now: years(now), on });
  return { text: age ? `${age.text} ${text}` : text, warns: true };
}

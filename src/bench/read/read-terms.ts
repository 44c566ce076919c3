import type { LimitTerm } from '#compute';
import type { LinkReader } from './link-reader.ts';
import { LINK_SPECS, termSpec } from './link-spec.ts';
import { problemStrings } from './problem-strings.ts';

/** The terms of a limit that are given; one at least is needed, and what one hangs on is needed with it. */
export function readTerms(reader: LinkReader): LimitTerm[] {
  const terms = [ofReading, ofScale, ofDigits, ofFloor, ofKelvin, ofYear].flatMap((term) => term(reader));
  if (terms.length === 0 && reader.clean()) reader.tell('ofReading', problemStrings.noTerm);
  return terms;
}

type Read = (reader: LinkReader) => LimitTerm[];

const ofReading: Read = ({ optional }) => {
  const percent = optional('ofReading', LINK_SPECS.ofReading);
  return percent === undefined ? [] : [{ of: 'reading', percent }];
};

const ofScale: Read = ({ method, number, optional }) => {
  const percent = optional('ofScale', LINK_SPECS.ofScale);
  if (percent === undefined) return [];
  return [{ of: 'fullScale', percent, fullScale: number('fullScale', termSpec(method)) }];
};

const ofDigits: Read = ({ method, number, optional }) => {
  const count = optional('digits', LINK_SPECS.digits);
  return count === undefined ? [] : [{ of: 'digits', count, step: number('step', termSpec(method)) }];
};

const ofFloor: Read = ({ method, optional }) => {
  const amount = optional('floor', termSpec(method));
  return amount === undefined ? [] : [{ of: 'floor', amount }];
};

const ofKelvin: Read = ({ number, optional, tell, clean }) => {
  const percent = optional('perKelvin', LINK_SPECS.perKelvin);
  if (percent === undefined) return [];
  const range = {
    lower: number('coldest', LINK_SPECS.coldest),
    upper: number('warmest', LINK_SPECS.warmest),
  };
  const temperature = number('temperature', LINK_SPECS.temperature);
  if (clean() && range.lower > range.upper) tell('warmest', problemStrings.warmestBelow);
  return [{ of: 'kelvin', terms: [{ of: 'reading', percent }], temperature, range }];
};

const ofYear: Read = ({ number, optional }) => {
  const percent = optional('perYear', LINK_SPECS.perYear);
  if (percent === undefined) return [];
  return [{ of: 'year', terms: [{ of: 'reading', percent }], years: number('years', LINK_SPECS.years) }];
};

import type { CheckKey } from '../../sheet/check-keys.ts';
import { problemStrings } from '../read/problem-strings.ts';
import { LONGEST_LABEL, LONGEST_NOTE, LONGEST_TABLE, LONGEST_TEXT } from '../read/spec.ts';
import { strings } from '../strings.ts';
import {
  choice,
  FORM_CODES,
  flag,
  KIND_CODES,
  lines,
  METHOD_CODES,
  numberFrom,
  SOURCE_CODES,
  SPECIFICATION_CODES,
  text,
  UNIT_CODES,
} from './address-codes.ts';

/** Longest column of readings that an address carries. */
export const LONGEST_COLUMN = 40_000;

/** A certificate's table, and from which instrument a link was taken. */
const instrumentFields = () => {
  const labels = strings.link.labels;
  return {
    table: lines('ct', labels.table, LONGEST_TABLE),
    by: choice('cb', labels.by, { frequency: 'f', level: 'l' }, 'frequency'),
    instrument: text('in', labels.instrument, LONGEST_LABEL),
    part: choice('ip', labels.part, { statement: 's', drift: 'd' }, 'statement'),
    calibrated: text('ca', labels.calibrated),
    interval: text('iv', labels.interval),
  } as const;
};

/** A link; its id is its place. */
export const linkFields = () => {
  const labels = strings.link.labels;
  return {
    label: text('n', labels.label, LONGEST_LABEL),
    kind: choice('y', labels.kind, KIND_CODES, 'other'),
    loss: numberFrom('l', labels.loss, '0'),
    form: choice('f', labels.form, FORM_CODES, 'rectangular'),
    amount: text('a', labels.amount),
    lower: text('lo', labels.lower),
    upper: text('up', labels.upper),
    factor: numberFrom('k', labels.factor, '2'),
    probability: numberFrom('p', labels.probability, '95'),
    freedom: text('d', labels.freedom),
    count: text('c', labels.count),
    top: numberFrom('t', labels.top, '0.5'),
    doubt: text('q', labels.doubt),
    unit: choice('u', labels.unit, UNIT_CODES, 'dB'),
    percentOf: choice('o', labels.percentOf, { reading: 'r', trueValue: 't' }, 'reading'),
    source: choice('s', labels.source, SOURCE_CODES, 'specification'),
    rated: text('r', labels.rated),
    cause: text('z', labels.cause, LONGEST_LABEL),
    direction: choice('m', labels.direction, { with: 'w', against: 'a' }, 'with'),
    reliability: text('b', labels.reliability),
    sourceSwr: text('ss', labels.sourceSwr),
    loadSwr: text('sl', labels.loadSwr),
    ofReading: text('e', labels.ofReading),
    ofScale: text('g', labels.ofScale),
    fullScale: text('h', labels.fullScale),
    digits: text('i', labels.digits),
    step: text('j', labels.step),
    floor: text('w', labels.floor),
    perKelvin: text('pk', labels.perKelvin),
    coldest: numberFrom('tc', labels.coldest, '18'),
    warmest: numberFrom('tw', labels.warmest, '28'),
    temperature: text('td', labels.temperature),
    perYear: text('py', labels.perYear),
    years: text('yr', labels.years),
    ...instrumentFields(),
    better: text('be', labels.better),
    off: flag('x', labels.off),
    assumed: flag('as', labels.assumed),
  } as const;
};

/** A point; its id is its place. */
export const pointFields = () => {
  const labels = strings.point.labels;
  return {
    label: text('t', labels.label, LONGEST_LABEL),
    frequency: text('f', labels.frequency),
    specification: choice('s', labels.specification, SPECIFICATION_CODES, 'around'),
    nominal: text('n', labels.nominal),
    tolerance: text('a', labels.tolerance),
    above: text('ab', labels.above),
    below: text('be', labels.below),
    lowest: text('lo', labels.lowest),
    highest: text('up', labels.highest),
    readings: lines('m', labels.readings, LONGEST_COLUMN),
    reflected: lines('r', labels.reflected, LONGEST_COLUMN),
    riseDc: lines('k', labels.riseDc, LONGEST_COLUMN),
    volts: lines('e', labels.volts, LONGEST_COLUMN),
    amperes: lines('i', labels.amperes, LONGEST_COLUMN),
    read: flag('ok', problemStrings.agreed),
  } as const;
};

/** A logged change. */
export const changeFields = () =>
  ({
    at: text('a', problemStrings.change),
    what: text('w', problemStrings.change),
    from: text('f', problemStrings.change, LONGEST_TEXT),
    to: text('t', problemStrings.change, LONGEST_TEXT),
    reason: text('r', problemStrings.change, LONGEST_TEXT),
  }) as const;

/** What the methods ask for once. */
export const setupFields = () => {
  const { labels } = strings;
  return {
    method: choice('h', labels.method, METHOD_CODES, 'padsIntoMeter'),
    shows: choice('sh', labels.shows, { mean: 'm', peakEnvelope: 'p' }, 'mean'),
    load: numberFrom('ro', labels.load, '50'),
    scopeBandwidth: text('bs', labels.scopeBandwidth),
    probeBandwidth: text('bp', labels.probeBandwidth),
    terminated: choice('tm', labels.terminated, { yes: 'y', no: 'n' }, 'yes'),
    drop: text('vd', labels.drop),
    curve: flag('cu', labels.curve),
    forwardScale: text('ff', labels.forwardScale),
    forwardPercent: text('fp', labels.forwardPercent),
    reflectedScale: text('rf', labels.reflectedScale),
    reflectedPercent: text('rp', labels.reflectedPercent),
    floor: text('fl', labels.floor),
    largest: text('la', labels.largest),
    damage: text('d', labels.damage),
    largestPeak: text('lp', labels.largestPeak),
    largestReverse: text('lr', labels.largestReverse),
  } as const;
};

/** Who, when, with what. */
export const recordFields = () => {
  const { labels } = strings;
  return {
    by: text('rb', labels.by, LONGEST_TEXT),
    date: text('rd', labels.date, LONGEST_TEXT),
    instruments: lines('ri', labels.instruments, LONGEST_NOTE),
    certificates: lines('rc', labels.certificates, LONGEST_NOTE),
    supply: text('rs', labels.supply, LONGEST_TEXT),
    temperature: text('rt', labels.temperature, LONGEST_TEXT),
    remarks: lines('rm', labels.remarks, LONGEST_NOTE),
  } as const;
};

/** Readings of the validity checks, by their key. */
export const checkFields = () => {
  const check = (key: string) => lines(key, problemStrings.check, LONGEST_COLUMN);
  return {
    stepWithout: check('sa'),
    stepWith: check('sb'),
    stepPad: check('sp'),
    stepAllowed: check('sl'),
    off: check('oa'),
    offAllowed: check('ol'),
    reconnections: check('na'),
    reconnectionsAllowed: check('nl'),
    warmUpMinutes: check('um'),
    warmUpLevels: check('ul'),
    warmUpAllowed: check('ua'),
    secondHarmonic: check('hb'),
    thirdHarmonic: check('hc'),
    harmonicsAllowed: check('hl'),
  } as const satisfies Readonly<Record<CheckKey, unknown>>;
};

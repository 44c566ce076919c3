import type { AddressSpec, ChoiceSpec, TextSpec } from '../address/field-spec.ts';
import { LONGEST_LABEL, LONGEST_TEXT, MOST_LINKS } from './spec.ts';
import { strings } from './strings.ts';

/** Longest text of a number field that an address carries: what is longer is no number. */
const LONGEST_NUMBER = 60;
/** Longest column of readings that an address carries. */
const LONGEST_COLUMN = 8000;

const text = (key: string, label: string, maxLength = LONGEST_NUMBER, byDefault = ''): TextSpec => ({
  type: 'text',
  key,
  label,
  maxLength,
  default: byDefault,
});

const choice = <Code extends string>(
  key: string,
  label: string,
  choices: Readonly<Record<Code, string>>,
  byDefault: NoInfer<Code>,
): ChoiceSpec<Code> => ({ type: 'choice', key, label, choices, default: byDefault });

const labels = strings.link.labels;

const FORMS = {
  rectangular: 'lim',
  triangular: 'tri',
  arcsine: 'ush',
  trapezoid: 'trap',
  uncertainLimits: 'ulim',
  asymmetric: 'lop',
  expanded: 'exp',
  coverage: 'cov',
  standard: 'std',
  readings: 'read',
  displayStep: 'step',
  halfWithin: 'half',
} as const;

const KINDS = {
  comparison: 'comp',
  meter: 'meter',
  mismatch: 'mis',
  pad: 'pad',
  cable: 'cable',
  amplifier: 'amp',
  other: 'other',
} as const;

const SOURCES = {
  specification: 'spec',
  certificate: 'cert',
  measured: 'meas',
  borrowed: 'borr',
  judged: 'judge',
} as const;

const linkFields = () =>
  ({
    label: text('n', labels.label, LONGEST_LABEL),
    kind: choice('y', labels.kind, KINDS, 'other'),
    loss: text('l', labels.loss, LONGEST_NUMBER, '0'),
    form: choice('f', labels.form, FORMS, 'rectangular'),
    amount: text('a', labels.amount),
    lower: text('lo', labels.lower),
    upper: text('up', labels.upper),
    factor: text('k', labels.factor, LONGEST_NUMBER, '2'),
    probability: text('p', labels.probability, LONGEST_NUMBER, '95'),
    freedom: text('d', labels.freedom),
    count: text('c', labels.count),
    top: text('t', labels.top, LONGEST_NUMBER, '0.5'),
    doubt: text('q', labels.doubt),
    unit: choice('u', labels.unit, { dB: 'db', percentOfPower: 'pp', percentOfVolts: 'pv' }, 'dB'),
    percentOf: choice('o', labels.percentOf, { reading: 'r', trueValue: 't' }, 'reading'),
    source: choice('s', labels.source, SOURCES, 'specification'),
    rated: text('r', labels.rated),
    cause: text('z', labels.cause, LONGEST_LABEL),
  }) as const;

/**
 * The sheet in an address: every field as typed, so that also what cannot be used yet comes back. Nothing is left to the
 * demonstration: a value that an address lost is empty and asks to be filled in.
 */
export const sheetAddressSpec = () =>
  ({
    version: 1,
    fields: {
      title: text('t', strings.labels.title, LONGEST_TEXT),
      power: choice(
        'w',
        strings.labels.power,
        { carrier: 'car', peakEnvelope: 'pep', mean: 'mean' },
        'carrier',
      ),
      plane: text('p', strings.labels.plane, LONGEST_TEXT),
      conditions: text('c', strings.labels.conditions, LONGEST_TEXT),
      specification: choice(
        's',
        strings.labels.specification,
        { around: 'pm', between: 'lim', atMost: 'max', atLeast: 'min' },
        'around',
      ),
      nominal: text('n', strings.labels.nominal),
      tolerance: text('a', strings.labels.tolerance),
      lowest: text('lo', strings.labels.lowest),
      highest: text('up', strings.labels.highest),
      rule: choice(
        'r',
        strings.labels.rule,
        { simple: 'simple', guardBand: 'guard', probability: 'prob' },
        'simple',
      ),
      multiplier: text('g', strings.labels.multiplier, LONGEST_NUMBER, '1'),
      required: text('q', strings.labels.required, LONGEST_NUMBER, '95'),
      readings: { ...text('m', strings.labels.readings, LONGEST_COLUMN), lines: true },
      scatter: text('e', strings.labels.scatter),
      repeats: text('f', strings.labels.repeats),
      damage: text('d', strings.labels.damage),
      links: {
        type: 'list',
        key: 'l',
        label: strings.links.title,
        maxLength: MOST_LINKS,
        of: linkFields(),
        default: [],
      },
    },
  }) as const satisfies AddressSpec;

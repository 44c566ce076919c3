import type { AddressSpec, Migration } from '../../address/field-spec.ts';
import { unfolded } from '../../address/pack.ts';
import { problemStrings } from '../read/problem-strings.ts';
import { LONGEST_TEXT, MOST_LINKS, MOST_POINTS } from '../read/spec.ts';
import { strings } from '../strings.ts';
import {
  choice,
  DELIVERY_CODES,
  KEYING_CODES,
  numberFrom,
  POWER_CODES,
  RULE_CODES,
  text,
} from './address-codes.ts';
import {
  changeFields,
  checkFields,
  linkFields,
  pointFields,
  recordFields,
  setupFields,
} from './address-fields.ts';
import { wordsOfVersion3 } from './address-words.ts';

/** More changes of what was agreed than this no record bears. */
const MOST_CHANGES = 99;

/** The first version had one point, whose fields stood among the sheet's own. Their keys are not given away again. */
const ofFirstPoint = ['s', 'n', 'a', 'lo', 'up', 'm'];

const withPoints: Migration = (pairs) =>
  new Map([
    ['x', '1'],
    ...[...pairs].map(([key, value]): [string, string] => [
      ofFirstPoint.includes(key) ? `x1${key}` : key,
      value,
    ]),
  ]);

/** Whether an address that lost its version has the keys of the first one. */
export const isOfFirstVersion = (address: string): boolean =>
  /(?:^|[#?&])(?:n|a|lo|up|s|m)=/.test(address) && !/(?:^|[#?&])(?:x\d*|h)[a-z]*=/.test(address);

/** What is measured, and how it is judged. */
const measuredFields = () => {
  const { labels } = strings;
  return {
    title: text('t', labels.title, LONGEST_TEXT),
    power: choice('w', labels.power, POWER_CODES, 'carrier'),
    delivery: choice('y', labels.delivery, DELIVERY_CODES, 'intoIdeal'),
    keying: choice('k', labels.keying, KEYING_CODES, 'keyDown'),
    plane: text('p', labels.plane, LONGEST_TEXT),
    conditions: text('c', labels.conditions, LONGEST_TEXT),
    rule: choice('r', labels.rule, RULE_CODES, 'simple'),
    multiplier: numberFrom('g', labels.multiplier, '1'),
    required: numberFrom('q', labels.required, '95'),
    scatter: text('e', labels.scatter),
    repeats: text('f', labels.repeats),
  } as const;
};

/**
 * The sheet in an address: every field as typed, so that also what cannot be used yet comes back. Nothing is left to the
 * demonstration: a value that an address lost is empty and asks to be filled in.
 */
export const sheetAddressSpec = () => {
  return {
    version: 3,
    fields: {
      ...measuredFields(),
      ...setupFields(),
      ...recordFields(),
      points: {
        type: 'list',
        key: 'x',
        label: strings.point.choose,
        maxLength: MOST_POINTS,
        of: pointFields(),
        default: [],
      },
      links: {
        type: 'list',
        key: 'l',
        label: strings.links.title,
        maxLength: MOST_LINKS,
        of: linkFields(),
        default: [],
      },
      lockedAt: text('ld', problemStrings.agreed),
      changes: {
        type: 'list',
        key: 'z',
        label: problemStrings.change,
        maxLength: MOST_CHANGES,
        of: changeFields(),
        default: [],
      },
      ...checkFields(),
    },
    older: { 1: withPoints, 2: (pairs) => pairs },
    unfold: (code, isCut) => unfolded({ words: wordsOfVersion3(), code, isCut }),
  } as const satisfies AddressSpec;
};

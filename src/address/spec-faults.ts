import {
  type AddressSpec,
  type FieldSpec,
  type Fields,
  type ListSpec,
  PACKED_KEY,
  type ScalarSpec,
} from './field-spec.ts';
import { scalarFault } from './scalar.ts';

const KEY = /^[a-z]{1,3}$/;
const SHORT_CODE = /^[a-z0-9]{1,8}$/;
/** The version's key, and that of a packed address. */
const RESERVED: readonly string[] = ['v', PACKED_KEY];
const LONGEST_LIST = 999;

function repeats(words: readonly string[]): readonly string[] {
  return words.filter((word, index) => words.indexOf(word) !== index);
}

function choiceFaults(name: string, field: ScalarSpec): readonly string[] {
  if (field.type !== 'choice') return [];
  const shorts = Object.values(field.choices);
  return [
    ...shorts.filter((short) => !SHORT_CODE.test(short)).map((short) => `${name}: ${short} is no short code`),
    ...repeats(shorts).map((short) => `${name}: ${short} is used twice`),
  ];
}

function fieldFaults(name: string, field: FieldSpec): readonly string[] {
  const key = KEY.test(field.key) && !RESERVED.includes(field.key) ? [] : [`${name}: ${field.key} is no key`];
  if (field.type === 'list') {
    const long =
      Math.max(field.maxLength, field.default.length) > LONGEST_LIST
        ? [`${name}: more than ${LONGEST_LIST} records`]
        : [];
    const inner = [...fieldsFaults(field.of), ...defaultFaults(field)];
    return [...key, ...long, ...inner.map((fault) => `${name}.${fault}`)];
  }
  const fault = scalarFault(field, field.default);
  return [...key, ...choiceFaults(name, field), ...(fault ? [`${name}: its default ${fault}`] : [])];
}

const defaultFaults = ({ of, default: records }: ListSpec): readonly string[] =>
  records.flatMap((record, index) =>
    Object.entries(of).flatMap(([name, field]) => {
      const fault = scalarFault(field, record[name]);
      return fault === undefined ? [] : [`${index + 1}.${name}: its default ${fault}`];
    }),
  );

function fieldsFaults(fields: Fields): readonly string[] {
  const keys = Object.values(fields).map(({ key }) => key);
  return [
    ...repeats(keys).map((key) => `key ${key} is used twice`),
    ...Object.entries(fields).flatMap(([name, field]) => fieldFaults(name, field)),
  ];
}

/** What is wrong with a specification, for its own test: bad or repeated keys and codes, defaults that are not allowed. */
export function specFaults({ version, fields }: AddressSpec): readonly string[] {
  const fits = Number.isInteger(version) && version >= 1 && version <= 9;
  return [...(fits ? [] : [`version ${version} is not 1 to 9`]), ...fieldsFaults(fields)];
}

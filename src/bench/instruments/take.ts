import { yearsSince } from '../../instruments/age.ts';
import { type Day, readDay } from '../../instruments/day.ts';
import type { InstrumentEntries } from '../../instruments/instrument.ts';
import type { LinkEntries, SheetEntries } from '../../sheet/entries.ts';
import type { MethodKind } from '../../sheet/method.ts';
import { tidy, typed } from '../entries/typed.ts';
import { MOST_LINKS } from '../read/spec.ts';
import { freeId } from '../state/changed.ts';
import { asLink } from './as-link.ts';
import { type Instrument, readInstrument } from './read-instrument.ts';
import { instrumentStrings as strings } from './strings.ts';
import { byTerms, linkUnit } from './units.ts';

/** An instrument with the id under which it is kept. */
export interface Known {
  readonly id: string;
  readonly value: InstrumentEntries;
}

/** Why a sheet cannot take an instrument: its form is not finished, or the method reads nothing of its kind. */
export type NotTaken = 'unfinished' | 'unit';

/** Whether a link of a sheet can be stated by an instrument. */
export function whyNot(
  value: InstrumentEntries,
  method: MethodKind,
  link: LinkEntries,
): NotTaken | undefined {
  if (linkUnit(value, method, link.unit) === undefined) return 'unit';
  return readInstrument(value).instrument === undefined ? 'unfinished' : undefined;
}

/** What of a sheet follows an instrument: its links, and of a load the resistance. */
export type Taken = Pick<SheetEntries, 'links'> & Partial<Pick<SheetEntries, 'load'>>;

/**
 * The links of a sheet in which one is stated by an instrument, on a day: everything is copied, so that the sheet stays complete in
 * itself. Drift since the calibration becomes a link of its own right below, in place of what drift this link had before. Undefined where
 * the sheet cannot take it.
 */
export function taken(
  { links, method }: Pick<SheetEntries, 'links' | 'method'>,
  { linkId, known, on }: { readonly linkId: string; readonly known: Known; readonly on: Day },
): Taken | undefined {
  const link = links.find(({ id }) => id === linkId);
  const { instrument } = readInstrument(known.value);
  const unit = link && linkUnit(known.value, method, link.unit);
  if (link === undefined || instrument === undefined || unit === undefined) return undefined;
  const own = { ...stated(known, instrument, { ...link, unit }, on), ...ofSheet(link) };
  const drift = driftLink(known, instrument, own, on);
  const rest = links.map((each) => (each.id === linkId ? own : each));
  const stays = rest.filter((each) => !isDriftOf(each, known.id) && !isOrphan(each, rest));
  const place = stays.indexOf(own) + 1;
  const added = drift === undefined || stays.length >= MOST_LINKS ? [] : [drift];
  const { kind, resistance } = known.value;
  return {
    links: numbered(stays.toSpliced(place, 0, ...added), rest),
    ...(kind === 'load' && { load: resistance }),
  };
}

/** What a sheet says of a link whatever instrument stands there. */
const ofSheet = ({ id, cause, direction, better, off, temperature }: LinkEntries) => ({
  id,
  cause,
  direction,
  better,
  off,
  temperature,
});

const isDriftOf = ({ instrument, part }: LinkEntries, id: string): boolean =>
  part === 'drift' && instrument === id;

/** Drift of an instrument that is no longer in the chain. */
const isOrphan = (link: LinkEntries, links: readonly LinkEntries[]): boolean =>
  link.part === 'drift' &&
  link.instrument !== '' &&
  !links.some(({ instrument, part }) => part === 'statement' && instrument === link.instrument);

/** The new link of the list gets an id that none had. */
const numbered = (links: readonly LinkEntries[], before: readonly LinkEntries[]): readonly LinkEntries[] =>
  links.map((link) => (link.id === '' ? { ...link, id: freeId('link', before) } : link));

const reference = ({ id, value }: Known) => ({
  instrument: id,
  calibrated: readDay(value.calibrated) ?? '',
  interval: value.interval.trim(),
});

function stated(known: Known, { lossDb, correctionDb }: Instrument, link: LinkEntries, on: Day): LinkEntries {
  const { value } = known;
  const years = yearsSince(value.calibrated, on);
  return {
    ...asLink(value, link),
    ...(correctionDb !== 0 && { loss: typed(tidy(lossDb + correctionDb)) }),
    ...(byTerms(value) && years !== undefined && { years: typed(years) }),
    ...reference(known),
  };
}

/** What an instrument may have drifted since its calibration, as limits; undefined where no drift is stated. */
function driftLink(
  known: Known,
  { driftPerYear }: Instrument,
  own: LinkEntries,
  on: Day,
): LinkEntries | undefined {
  const years = yearsSince(known.value.calibrated, on);
  if (driftPerYear === undefined || driftPerYear === 0 || years === undefined) return undefined;
  return {
    ...asLink({ ...known.value, basis: 'dataSheet', form: 'rectangular' }, { id: '', unit: own.unit }),
    label: strings.driftOf(own.label),
    loss: '0',
    amount: typed(Math.round(1e4 * driftPerYear * years) / 1e4),
    // limits do not read it: it says for how long they were reckoned
    years: typed(years),
    rated: '',
    off: own.off,
    ...reference(known),
    part: 'drift',
  };
}

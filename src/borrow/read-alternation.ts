import { mean } from '#compute';
import { linkPath } from '../bench/form/keys.ts';
import type { CheckedAlternation, CheckedPlace, LaterReading } from './checked.ts';
import { placeText } from './place-text.ts';
import { earlierOf, type Fields, notesOf } from './read-fields.ts';
import { readRounds } from './read-rounds.ts';
import { PLACE } from './specs.ts';
import { strings } from './strings.ts';

/** Readings in turn with everything that is stated beside them. */
export function readAlternation(fields: Fields): CheckedAlternation {
  const { entries, number, optional } = fields;
  const form = entries.stated;
  const places = readPlaces(fields);
  return {
    kind: 'alternation',
    notes: notesOf(entries),
    along: entries.along,
    lender: {
      form,
      amount: number('amount'),
      factor: form === 'expanded' ? number('factor') : 1,
      drift: form === 'expanded' ? (optional('lenderDrift') ?? 0) : 0,
    },
    influences: {
      resolution: optional('resolution') ?? 0,
      temperature: optional('temperature') ?? 0,
      mismatch: optional('mismatch') ?? 0,
      other: optional('other') ?? 0,
    },
    earlier: earlierOf(fields),
    claimed: optional('claimed'),
    places,
    later: readLater(fields, places),
  };
}

function readPlaces({ entries, collect, tell }: Fields): readonly CheckedPlace[] {
  const places: CheckedPlace[] = [];
  entries.places.forEach(({ id, at: typed, readings }, index) => {
    const read = readRounds(readings);
    if (read.rounds === undefined)
      tell(linkPath(id, 'readings'), strings.readingsOf(index + 1), read.problem);
    const rounds = read.rounds ?? [];
    const own = rounds.length > 0 ? mean(rounds.map((round) => round.own)) : 0;
    const taken = entries.along === 'level' && typed.trim() === '';
    const field = { path: linkPath(id, 'at'), label: strings.atOf(entries.along, index + 1), text: typed };
    const at = taken ? own : collect.number({ ...field, spec: PLACE[entries.along] });
    if (collect.problems.length === 0 && places.some((other) => other.at === at))
      tell(field.path, field.label, strings.samePlace);
    places.push({ id, at, rounds });
  });
  return places.toSorted((a, b) => a.at - b.at);
}

/** The later reading, if there is one; where it lies between the places, or has to. */
function readLater(fields: Fields, places: readonly CheckedPlace[]): LaterReading | undefined {
  const { entries, optional, collect, tell } = fields;
  const reading = optional('later');
  if (reading === undefined) return undefined;
  const alone = places.length === 1;
  const byLevel = entries.along === 'level';
  const text = entries.laterAt;
  const label = strings.labels.laterAt;
  const at = byLevel
    ? reading
    : alone && text.trim() === ''
      ? (places[0]?.at ?? 0)
      : collect.number({ path: 'laterAt', label, text, spec: PLACE.frequency });
  const [lowest = at, highest = at] = [places[0]?.at, places.at(-1)?.at];
  const beyond = at < lowest || at > highest;
  if (beyond && !(alone && byLevel) && collect.problems.length === 0) {
    const path = byLevel ? 'later' : 'laterAt';
    tell(
      path,
      strings.labels[path],
      strings.beyond(entries.along, placeText(entries.along, lowest), placeText(entries.along, highest)),
    );
  }
  return {
    reading,
    at,
    temperature: optional('laterTemperature') ?? 0,
    mismatch: optional('laterMismatch') ?? 0,
    linearity: optional('linearity') ?? 0,
  };
}

import { levelDbm, levelToPower, powerToLevel } from '#compute';
import { type LevelDiagramProps, type LevelRow, levelSpan } from '../../figures/level-diagram.layout.ts';
import { type LinePart, levelAtEnd, lineSteps, radiatedLevels } from '../../sheet/line.ts';
import { ratingOf } from '../../sheet/line-cautions.ts';
import { lineSlip, slipEnd } from '../../sheet/line-slips.ts';
import { changeText, levelText } from '../../text/quantity-text.ts';
import type { FieldsState } from '../parts/fields.ts';
import { type LineFields, type LineState, lineOf } from './spec.ts';
import { strings } from './strings.ts';
import { cautionsFor, change, dbm, heatIn, inputOf, watts } from './words.ts';

/** Id of the row of the socket and of the rows at the end. */
export const SOCKET = 'level';
const INPUT = 'input';
export const EIRP = 'antenna';
const ERP = 'erp';

/** The gain of an antenna in its unit. */
const over = ({ from, to }: Place): string =>
  changeText('shown', { value: to - from, decimals: 2, unit: 'dBi' });

/** A row's place: where the level comes in, and where it goes out. */
type Place = Pick<LevelRow, 'from' | 'to'>;

/** Places of every row of a state; of a part that is left out there is none. */
function placesOf(state: LineState, without?: LinePart): ReadonlyMap<string, Place> {
  const line = lineOf(state);
  const steps = lineSteps(line, without).map(({ id, from, to }) => [id, { from, to }] as const);
  const end = levelAtEnd(line, without);
  const socket = { from: line.levelDbm, to: line.levelDbm };
  if (state.end === 'instrument')
    return new Map([[SOCKET, socket], ...steps, [INPUT, { from: end, to: end }]]);
  const { eirp, erp } = radiatedLevels(line);
  return new Map([
    [SOCKET, socket],
    ...steps,
    [EIRP, { from: end, to: eirp }],
    [ERP, { from: eirp, to: erp }],
  ]);
}

function partRow(state: LineState, id: LinePart, place: Place): LevelRow {
  const heat = heatIn(cautionsFor(state), id);
  const rating = ratingOf(id);
  const gain = change('shown', place.to - place.from);
  const tooMuch = heat?.status === 'exceeded';
  const bypassed = id === 'amplifier' && place.to === place.from;
  return {
    id,
    label: strings.parts[id],
    detail: bypassed
      ? strings.bypassed
      : heat === undefined
        ? gain
        : tooMuch
          ? strings.tooMuch({ gain, power: watts('shown', heat.incident) })
          : strings.heat({ gain, heat: watts('shown', heat.heat) }),
    number: dbm('shown', place.to),
    ...place,
    ...(rating && { limit: powerToLevel(rating.power) }),
    over: tooMuch,
    handle: true,
  };
}

function placeRow(state: LineState, id: string, place: Place): LevelRow {
  const base = {
    id,
    ...place,
    number: levelText('shown', { levelDbm: place.to, decimals: id === EIRP || id === ERP ? 2 : 1 }),
    over: false,
    handle: id === SOCKET || id === EIRP,
  };
  const power = watts('shown', levelToPower(levelDbm(place.to)));
  switch (id) {
    case INPUT: {
      const input = inputOf(cautionsFor(state));
      const most = dbm('shown', input.level);
      const tooMuch = input.status === 'exceeded';
      return {
        ...base,
        label: strings.input,
        detail: tooMuch ? strings.inputTooMuch(most) : strings.inputDetail(most),
        limit: state.damage,
        over: tooMuch,
      };
    }
    case EIRP:
      return { ...base, label: strings.eirp, detail: `${over(place)}, ${power}` };
    case ERP:
      return {
        ...base,
        label: strings.erp,
        detail: `${change('shown', place.to - place.from, 2)}, ${power}`,
      };
    default:
      return { ...base, label: strings.socket, detail: power };
  }
}

const isPart = (id: string): id is LinePart => Object.hasOwn(strings.parts, id);

/** The rows of a state, from the socket to the end of the line. */
export const rowsOf = (state: LineState): readonly LevelRow[] =>
  [...placesOf(state)].map(([id, place]) =>
    isPart(id) ? partRow(state, id, place) : placeRow(state, id, place),
  );

/** The level that the slip of a state states, with the row where it belongs; none where it belongs to the other end. */
function slippedOf(state: LineState): { row: string; level: number } | undefined {
  if (state.slip === 'none' || slipEnd(state.slip) !== state.end) return undefined;
  const { stated } = lineSlip(state.slip, lineOf(state));
  return { row: state.end === 'antenna' ? EIRP : SOCKET, level: stated };
}

const leftOutOf = (state: LineState): LinePart | undefined =>
  state.without === 'none' || state.end === 'antenna' ? undefined : state.without;

/** Every level that the axis must hold. */
function levelsOf(state: LineState): readonly number[] {
  const left = leftOutOf(state);
  const places = [...placesOf(state).values(), ...(left ? placesOf(state, left).values() : [])];
  const limits = state.end === 'instrument' ? [state.damage] : [];
  const slipped = slippedOf(state);
  return [...places.flatMap(({ from, to }) => [from, to]), ...limits, ...(slipped ? [slipped.level] : [])];
}

/** The figure's data of a state; its axis stays while a handle is held. */
export function figureOf({
  values,
  before,
  held,
}: FieldsState<LineFields>): Omit<LevelDiagramProps, 'frame'> {
  const rows = rowsOf(values);
  const along = (places: ReadonlyMap<string, Place>) => rows.map(({ id }) => places.get(id));
  const left = leftOutOf(values);
  const ghost = before?.end === values.end ? placesOf(before) : undefined;
  const moved = ghost && rows.some(({ id, to }) => Math.abs((ghost.get(id)?.to ?? to) - to) > LEAST_DB);
  const ground = held ?? values;
  return {
    rows,
    ghost: ghost && moved ? along(ghost) : undefined,
    left: left && along(placesOf(values, left)),
    slipped: slippedOf(values),
    within: levelSpan([...levelsOf(ground), ...(ghost && moved && !held && before ? levelsOf(before) : [])]),
  };
}

/** A ghost closer than this, in dB, would only blur the staircase. */
const LEAST_DB = 0.04;

/** The number that a field takes when its handle is pulled to a level. */
export function pulledTo(
  state: LineState,
  id: string,
  level: number,
): { name: keyof LineFields; value: number } {
  const from = placesOf(state).get(id)?.from ?? level;
  switch (id) {
    case 'first':
    case 'coax':
    case 'second':
      return { name: id, value: from - level };
    case 'amplifier':
      return { name: id, value: level - from };
    case EIRP: {
      const { gainDbi } = radiatedLevels(lineOf(state));
      return { name: 'antenna', value: level - from - (gainDbi - state.antenna) };
    }
    default:
      return { name: 'level', value: level };
  }
}

import type { Interval } from '#compute';
import type { BandRow } from '../../figures/reading-band.types.ts';
import type { BandChain, Cumulative, Rung } from '../../sheet/chain.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { decimalsFor } from '../../text/place.ts';
import { levelText } from '../../text/quantity-text.ts';
import { statementText } from '../../text/statement-text.ts';
import type { Style } from '../../text/style.ts';

export const DEFINITION_ID = 'definition';
export const SOCKET_ID = 'socket';

export interface BandRowOptions {
  readonly chain: BandChain;
  /** The chain before the last change, for the ghost. */
  readonly before?: BandChain | undefined;
  readonly showLimits: boolean;
  readonly showCurve: boolean;
  /** Whether the ends of strips can be dragged. */
  readonly handles: boolean;
  readonly socketLabel?: string;
  /** How numbers are written; as on the page unless given. */
  readonly numbers?: Style | undefined;
}

/** The rows of the figure: the definition, one a rung, and the transmitter at the foot. */
export function bandRows(options: BandRowOptions): BandRow[] {
  const { chain } = options;
  const rungs = chain.rungs.map((rung) => rungRow(rung, options));
  return [definitionRow(), ...rungs, socketRow(options)];
}

const definitionRow = (): BandRow => ({
  id: DEFINITION_ID,
  label: 'The SI definition',
  detail: 'exact',
  number: '',
  dominant: false,
  handle: false,
});

function rungRow(rung: Rung<Cumulative>, options: BandRowOptions): BandRow {
  const { chain, before } = options;
  const dominant = chain.dominantIds.includes(rung.id);
  const ghost = before?.rungs.find(({ id }) => id === rung.id)?.cumulative;
  return {
    id: rung.id,
    label: rung.link?.label ?? 'Scatter of the readings',
    detail: rungDetail(rung, options, dominant),
    number: bandText(rung.cumulative, options.numbers),
    handle: options.handles && rung.link?.unit === 'dB',
    dominant,
    ...drawn(rung.cumulative, ghost, options),
  };
}

function rungDetail(
  { link, id }: Rung<Cumulative>,
  { chain, numbers = 'shown' }: BandRowOptions,
  dominant: boolean,
): string {
  const row = chain.result.propagation.budget.find((candidate) => candidate.id === id);
  const adds = link
    ? statementText(numbers, link)
    : row
      ? standardText(row.standardUncertainty, numbers)
      : '';
  return `adds ${adds}${dominant ? ' · most' : ''}`;
}

/** What is stated as exact, a meter's scale of no percent say, adds nothing. */
const standardText = (u: number, style: Style): string =>
  u > 0
    ? `u ${plusMinusText(style, { halfWidth: u, decimals: decimalsFor(u), unit: 'dB' }).slice(1)}`
    : 'nothing';

function socketRow(options: BandRowOptions): BandRow {
  const { chain, before, socketLabel = 'The transmitter’s socket', numbers = 'shown' } = options;
  const { result } = chain;
  const decimals =
    result.propagation.expanded > 0 ? Math.max(0, decimalsFor(result.propagation.expanded)) : 2;
  return {
    id: SOCKET_ID,
    label: socketLabel,
    detail: levelText(numbers, { levelDbm: result.estimate, decimals: Math.min(decimals, 2) }),
    number: bandText(result, numbers),
    dominant: false,
    handle: false,
    ...drawn(result, before?.result, options),
  };
}

/** Strip, end marks, curve and ghost of one cumulative result; nothing where nothing has been added yet. */
function drawn(result: Cumulative, ghost: Cumulative | undefined, { showLimits, showCurve }: BandRowOptions) {
  const { propagation, worstCase } = result;
  if (propagation.standardUncertainty === 0) return {};
  // asked for only where it is drawn: it is found when it is asked for
  const whole = showCurve ? result.whole : undefined;
  return {
    strip: propagation.interval,
    ...(showLimits && { limits: { ...worstCase.interval, open: worstCase.unlimited.length > 0 } }),
    ...(whole && 'curve' in whole && { curve: whole.curve }),
    ...(ghost &&
      differs(ghost.propagation.interval, propagation.interval) && { ghost: ghost.propagation.interval }),
  };
}

/** A ghost closer than this to the strip, in dB, would only blur it. */
const GHOST_LEAST_DB = 0.004;

const differs = (a: Interval, b: Interval): boolean =>
  Math.max(Math.abs(a.lower - b.lower), Math.abs(a.upper - b.upper)) > GHOST_LEAST_DB;

/** The expanded uncertainty of a cumulative result as text; `exact` before anything is added. */
export function bandText(
  { propagation: { expanded } }: Pick<Cumulative, 'propagation'>,
  style: Style = 'shown',
): string {
  return expanded > 0
    ? plusMinusText(style, { halfWidth: expanded, decimals: decimalsFor(expanded), unit: 'dB' })
    : 'exact';
}

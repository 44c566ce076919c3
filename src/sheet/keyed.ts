import {
  addGain,
  dcPower,
  type Envelope,
  efficiency,
  gainDb,
  levelToPower,
  type Measurand,
  meanOfPeakEnvelope,
  meanOverPeakEnvelope,
  meantPower,
  netPower,
  type PowerKind,
  type PowerW,
  powerToLevel,
  powerW,
  reflectionOfSwr,
} from '#compute';

/** How a transmitter is keyed or modulated. */
export type Keying = Measurand['keying'];
export const KEYINGS = ['keyDown', 'stringOfDits', 'parisWord', 'twoEqualTones'] as const satisfies Keying[];
export type ShownKeying = (typeof KEYINGS)[number];

/** Where a power is meant: at the transmitter’s socket, or at the load behind the coax. */
export type Plane = 'socket' | 'load';
/** Which power at a plane: the wave that travels to the load, or what stays in it. */
export type Delivery = 'incident' | 'delivered';

/** A keyed transmitter with its supply, its coax and its load. */
export interface Keyed {
  /** Peak envelope power of the wave that leaves the socket, in watts. */
  readonly peakW: number;
  readonly keying: ShownKeying;
  readonly supplyV: number;
  /** Current from the supply key down, in amperes. */
  readonly supplyA: number;
  readonly coaxDb: number;
  readonly swr: number;
}

const envelopeOf = (keying: ShownKeying): Envelope => (keying === 'keyDown' ? 'steadyCarrier' : keying);

/** The mean’s share of the peak envelope power. */
export const shareOf = (keying: ShownKeying): number => meanOverPeakEnvelope(envelopeOf(keying));

/** The mean power of the wave that leaves the socket. */
export const meanOf = ({ peakW, keying }: Pick<Keyed, 'peakW' | 'keying'>): PowerW =>
  meanOfPeakEnvelope({ peakEnvelope: powerW(peakW), envelope: envelopeOf(keying) });

/**
 * The power of that kind at the socket; undefined for the carrier of two tones, which have none. The carrier of a keyed
 * transmitter is what it gives with the key held down.
 */
export function powerOfKind(keyed: Pick<Keyed, 'peakW' | 'keying'>, kind: PowerKind): PowerW | undefined {
  if (kind === 'carrier') return keyed.keying === 'twoEqualTones' ? undefined : powerW(keyed.peakW);
  const { keying } = keyed;
  const measurand = { kind, keying, delivery: 'incident', plane: 'socket' } as const;
  return meantPower({ measurand, mean: meanOf(keyed) });
}

/** The powers of a wave at both planes, for a wave of that power at the socket. */
export interface PlanePowers {
  readonly incident: PowerW;
  readonly reflected: PowerW;
  readonly delivered: PowerW;
}

/**
 * A wave at one plane. The wave that leaves the socket is taken as it is, whatever the load: a real transmitter may change with it.
 * @throws RangeError unless the power is above zero, the loss finite and the SWR 1 or more.
 */
export function powersAt(
  plane: Plane,
  { power, coaxDb, swr }: Pick<Keyed, 'coaxDb' | 'swr'> & { readonly power: PowerW },
): PlanePowers {
  const through = (wave: PowerW): PowerW =>
    wave === 0 ? wave : levelToPower(addGain({ level: powerToLevel(wave), gain: gainDb(0 - coaxDb) }));
  const atLoad = through(power);
  const back = powerW(atLoad * reflectionOfSwr(swr) ** 2);
  const incident = plane === 'load' ? atLoad : power;
  const reflected = plane === 'load' ? back : through(back);
  return { incident, reflected, delivered: netPower({ forward: incident, reflected }) };
}

/** What the supply gives and what becomes of it, as means over the same time. */
export interface SupplyShares {
  readonly input: PowerW;
  readonly output: PowerW;
  readonly heat: PowerW;
  readonly efficiency: number;
}

/**
 * Efficiency from the supply to the socket. Keyed, both sides are means: with the key up the transmitter is taken to draw
 * nothing. Undefined for two tones, whose current the key-down current does not tell, and where more would come out than goes in.
 */
export function supplyShares(keyed: Keyed): SupplyShares | undefined {
  if (keyed.keying === 'twoEqualTones') return undefined;
  const share = shareOf(keyed.keying);
  const input = powerW(dcPower({ volts: keyed.supplyV, amperes: keyed.supplyA }) * share);
  const output = meanOf(keyed);
  if (output > input || input === 0) return undefined;
  return { input, output, heat: powerW(input - output), efficiency: efficiency({ output, input }) };
}

import { ohms, powerW, voltsPeak } from '#compute';
import { measurementOf } from './at-point.ts';
import { clubSheet } from './club.ts';
import type { Measurement, Point, StatedLink } from './measurement.ts';
import { type Columns, type MethodKind, type MethodSetup, NO_READINGS } from './method.ts';
import { usualLinks } from './method-links.ts';

/** Frequencies of the club's hidden transmitter and of its sister, in Hz. */
const CLUB_HZ = 3.58e6;
const SISTER_HZ = 145e6;

/** What the club has to hand by each method. Every value is invented. */
const setups = (): Readonly<Record<MethodKind, MethodSetup>> => ({
  padsIntoMeter: { method: 'padsIntoMeter', shows: 'mean' },
  oscilloscope: {
    method: 'oscilloscope',
    resistance: ohms(49.8),
    bandwidthsHz: [100e6, 150e6],
    terminated: true,
    largestPeak: voltsPeak(300),
  },
  peakDetector: {
    method: 'peakDetector',
    resistance: ohms(49.8),
    diodeDropV: 0.55,
    curveFromDc: false,
    largestReverse: voltsPeak(70),
  },
  inLine: {
    method: 'inLine',
    shows: 'mean',
    forward: { fullScale: powerW(1), percentOfFullScale: 5 },
    reflected: { fullScale: powerW(1), percentOfFullScale: 5 },
  },
  dcSubstitution: { method: 'dcSubstitution', resistance: ohms(49.8) },
});

/** Readings of a transmitter that gives about 500 mW (27 dBm), in each method's own units. Invented. */
const readings = (): Readonly<Record<MethodKind, Columns>> => ({
  padsIntoMeter: { ...NO_READINGS, readings: [7] },
  oscilloscope: { ...NO_READINGS, readings: [14.1, 14.2, 14.2] },
  peakDetector: { ...NO_READINGS, readings: [6.54, 6.53, 6.53] },
  inLine: { ...NO_READINGS, readings: [0.51], reflected: [0.01] },
  dcSubstitution: { ...NO_READINGS, readings: [9.5], riseDc: [9.4], volts: [5], amperes: [0.1] },
});

/** The links of a method as the club knows them: looked up, and so no longer assumed. */
const knownLinks = (method: MethodKind): StatedLink[] =>
  usualLinks(method).map(({ assumed: _, ...link }) => link);

const points = (point: Omit<Point, 'id' | 'label' | 'specification'>): readonly [Point] => [
  { id: 'point1', label: '', specification: { lower: 25.5, upper: 28.5 }, ...point },
];

/** The demonstration transmitter measured by one of the five methods, 27 dBm at 3.58 MHz. Every value is invented. */
export function clubMeasurement(method: MethodKind): Measurement {
  const club = measurementOf(clubSheet());
  const measured = {
    ...club,
    record: clubRecord(),
    points: points({ frequencyHz: CLUB_HZ, columns: readings()[method] }),
  };
  if (method === 'padsIntoMeter') return measured;
  const { damageLevelDbm: _, ...rest } = measured;
  const delivery = method === 'inLine' ? ('net' as const) : ('intoIdeal' as const);
  return {
    ...rest,
    measurand: { ...club.measurand, delivery },
    setup: setups()[method],
    links: knownLinks(method),
  };
}

/** The club's 145 MHz sister on the same oscilloscope, which is then out of range. Every value is invented. */
export function sisterMeasurement(): Measurement {
  const club = clubMeasurement('oscilloscope');
  return {
    ...club,
    title: 'The sister on 145 MHz',
    measurand: {
      ...club.measurand,
      conditions: '145 MHz, key down, 12.0 V supply, after five minutes’ warm-up',
    },
    points: points({ frequencyHz: SISTER_HZ, columns: { ...NO_READINGS, readings: [8.1, 8.0] } }),
  };
}

/** Who measured, when and with what: invented, and no person's name. */
const clubRecord = (): Measurement['record'] => ({
  by: 'the club’s measuring evening',
  date: '2026-05-09',
  instruments: 'meter no. 3 of the neighbouring club, pad A, coax 7',
  certificates: 'meter: data sheet; comparisons: as stated (all invented)',
  supply: '12.0 V',
  temperature: '21 °C',
  remarks: '',
});

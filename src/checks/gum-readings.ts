import { roundToPlace, summariseReadings } from '#compute';
import type { Check } from './check.ts';
import { stated, sumOf } from './worked.ts';

const TEMPERATURES = `
96.90 98.18 98.25 98.61 99.03 99.49 99.56 99.74 99.89 100.07
100.33 100.42 100.68 100.95 101.11 101.20 101.57 101.84 102.36 102.72`;

const thermometer = () => summariseReadings(TEMPERATURES.trim().split(/\s+/).map(Number));

const readings = (): Check => ({
  id: 'gum-4.4.3',
  clause: '4.4.3',
  title: 'twenty temperatures have the printed mean, scatter and standard uncertainty',
  status: 'published',
  figures: [
    { what: 'mean', printed: '100.145', unit: '°C', compute: () => thermometer().mean },
    {
      what: 'mean, rounded',
      printed: '100.14',
      unit: '°C',
      compute: () => roundToPlace({ value: thermometer().mean, place: -2 }),
      tolerance: { within: 1e-9, because: 'the rounded value itself is compared' },
    },
    { what: 's', printed: '1.489', unit: '°C', compute: () => thermometer().standardDeviation ?? Number.NaN },
    {
      what: 'u of the mean',
      printed: '0.333',
      unit: '°C',
      compute: () => thermometer().standardDeviationOfMean ?? Number.NaN,
    },
  ],
  note: '100.145 is a tie; the Guide prints 100.14, a tie to the even digit. Rounding half up would give 100.15.',
});

/** Ten resistors of 1 kΩ in series, each known to 100 mΩ, the deviations under a cause or not. */
const resistors = (cause?: string) =>
  sumOf(
    Array.from({ length: 10 }, (_, i) => ({
      ...stated(`resistor ${i + 1}`, { form: 'standard', standardUncertainty: 0.1 }),
      ...(cause === undefined ? {} : { cause }),
    })),
  );

const commonStandard = (): Check => ({
  id: 'gum-5.2.2',
  clause: '5.2.2, example',
  title: 'ten resistors compared with one standard are uncertain by the sum and not by its root',
  status: 'published',
  given: 'ten of 1 kΩ in series, each u = 100 mΩ, all from one standard',
  figures: [
    {
      what: 'u, one shared cause',
      printed: '1',
      unit: 'Ω',
      compute: () => resistors('standard').standardUncertainty,
    },
    {
      what: 'u, if they were independent',
      printed: '0.32',
      unit: 'Ω',
      compute: () => resistors().standardUncertainty,
    },
  ],
});

/** GUM 4.4.3 and 5.2.2: readings, and parts that share a cause. */
export const readingsAndCauses = (): Check[] => [readings(), commonStandard()];

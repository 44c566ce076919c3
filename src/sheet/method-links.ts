import { limits, uShaped } from './link.ts';
import type { StatedLink } from './measurement.ts';
import type { MethodKind } from './method.ts';

/** A link as a method brings it: no loss, dB, of the reading, assumed until somebody looks into a data sheet. */
const assumed = (
  link: Partial<StatedLink> & Pick<StatedLink, 'id' | 'label' | 'kind' | 'stated' | 'source'>,
): StatedLink => ({ lossDb: 0, unit: 'dB', percentOf: 'reading', assumed: true, ...link });

const loadResistance = (): StatedLink =>
  assumed({
    id: 'load',
    label: 'Load resistance',
    kind: 'other',
    stated: limits(1),
    unit: 'percentOfResistance',
    source: 'measured',
  });

const padsIntoMeter = (): StatedLink[] => [
  assumed({ id: 'meter', label: 'Power meter', kind: 'meter', stated: limits(0.5), source: 'specification' }),
  assumed({
    id: 'mismatch',
    label: 'Mismatch at the meter',
    kind: 'mismatch',
    stated: { form: 'swr', sourceSwr: 1.5, loadSwr: 1.2 },
    source: 'judged',
  }),
  assumed({ id: 'connectors', label: 'Connectors', kind: 'cable', stated: limits(0.05), source: 'judged' }),
  assumed({
    id: 'cable',
    label: 'Cable',
    kind: 'cable',
    lossDb: 0.1,
    stated: limits(0.05),
    source: 'specification',
  }),
  assumed({
    id: 'pad',
    label: '20 dB pad',
    kind: 'pad',
    lossDb: 20,
    stated: limits(0.5),
    source: 'specification',
  }),
];

const oscilloscope = (): StatedLink[] => [
  assumed({
    id: 'gain',
    label: 'Gain of the oscilloscope',
    kind: 'meter',
    stated: limits(3),
    unit: 'percentOfVolts',
    source: 'specification',
  }),
  assumed({
    id: 'flatness',
    label: 'Flatness with frequency',
    kind: 'meter',
    stated: limits(0.1),
    source: 'judged',
  }),
  assumed({
    id: 'trace',
    label: 'Reading the trace',
    kind: 'meter',
    stated: limits(0.2),
    unit: 'voltsPeakToPeak',
    source: 'judged',
  }),
  assumed({ id: 'harmonics', label: 'Harmonics', kind: 'other', stated: limits(0.09), source: 'judged' }),
  loadResistance(),
  assumed({
    id: 'probe',
    label: 'What the probe takes',
    kind: 'other',
    stated: { form: 'asymmetric', lower: 0, upper: 0.05 },
    source: 'judged',
  }),
];

const peakDetector = (): StatedLink[] => [
  assumed({
    id: 'voltmeter',
    label: 'Voltmeter',
    kind: 'meter',
    stated: {
      form: 'terms',
      terms: [
        { of: 'reading', percent: 0.5 },
        { of: 'digits', count: 2, step: 0.01 },
      ],
    },
    unit: 'volts',
    source: 'specification',
  }),
  assumed({
    id: 'drop',
    label: 'Diode drop',
    kind: 'meter',
    stated: limits(0.1),
    unit: 'volts',
    source: 'judged',
  }),
  assumed({ id: 'harmonics', label: 'Harmonics', kind: 'other', stated: limits(0.28), source: 'judged' }),
  loadResistance(),
];

const inLine = (): StatedLink[] => [
  assumed({
    id: 'response',
    label: 'Frequency response',
    kind: 'meter',
    stated: limits(0.2),
    source: 'specification',
  }),
  assumed({
    id: 'directivity',
    label: 'Directivity',
    kind: 'mismatch',
    stated: uShaped(0.1),
    source: 'judged',
  }),
  assumed({
    id: 'needle',
    label: 'Reading the needle',
    kind: 'meter',
    stated: limits(2),
    unit: 'percentOfPower',
    source: 'judged',
  }),
];

const dcSubstitution = (): StatedLink[] => [
  assumed({
    id: 'voltmeter',
    label: 'Voltmeter',
    kind: 'meter',
    stated: limits(0.5),
    unit: 'percentOfDcVolts',
    source: 'specification',
  }),
  assumed({
    id: 'ammeter',
    label: 'Ammeter',
    kind: 'meter',
    stated: limits(1),
    unit: 'percentOfDcAmperes',
    source: 'specification',
  }),
  assumed({
    id: 'rf-rise',
    label: 'Thermometer with RF',
    kind: 'meter',
    stated: limits(0.1),
    unit: 'kelvinRf',
    source: 'judged',
  }),
  assumed({
    id: 'dc-rise',
    label: 'Thermometer with DC',
    kind: 'meter',
    stated: limits(0.1),
    unit: 'kelvinDc',
    source: 'judged',
  }),
  assumed({
    id: 'leak',
    label: 'Unequal loss of heat',
    kind: 'other',
    stated: limits(1),
    unit: 'percentOfPower',
    source: 'judged',
  }),
];

/**
 * The links that a method usually brings, from the instrument down to the transmitter, each marked as assumed. The figures are
 * typical ones (common practice; SWR 1.5 on 1.2 is 0.16 dB, a second harmonic of -30 dBc 0.28 dB on one peak, a third of -40 dBc
 * 0.09 dB on both) and nobody's data sheet.
 */
export function usualLinks(method: MethodKind): readonly StatedLink[] {
  switch (method) {
    case 'padsIntoMeter':
      return padsIntoMeter();
    case 'oscilloscope':
      return oscilloscope();
    case 'peakDetector':
      return peakDetector();
    case 'inLine':
      return inLine();
    case 'dcSubstitution':
      return dcSubstitution();
  }
}

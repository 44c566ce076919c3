import type { ColumnName, MethodKind } from '../../sheet/method.ts';
import type { OWN_IDS } from '../../sheet/to-model.ts';

const scatter = 'Scatter of the readings';

const oneColumn = {
  readings: scatter,
  reflected: scatter,
  riseDc: scatter,
  volts: scatter,
  amperes: scatter,
};

/** Names of inputs that are no links of the reader's. */
export const inputStrings = {
  scatter,
  own: {
    rollOff: 'Roll-off of the oscilloscope',
    scale: 'The meter’s scale',
  } satisfies Readonly<Record<(typeof OWN_IDS)[number], string>>,
  /** Where several columns are read, each has a scatter of its own. */
  scatterOf: {
    padsIntoMeter: oneColumn,
    oscilloscope: oneColumn,
    peakDetector: oneColumn,
    inLine: {
      ...oneColumn,
      readings: 'Scatter of the forward readings',
      reflected: 'Scatter of the reflected readings',
    },
    dcSubstitution: {
      ...oneColumn,
      readings: 'Scatter of the rise with RF',
      riseDc: 'Scatter of the rise with DC',
      volts: 'Scatter of the DC volts',
      amperes: 'Scatter of the DC amperes',
    },
  } satisfies Readonly<Record<MethodKind, Readonly<Record<ColumnName, string>>>>,
} as const;

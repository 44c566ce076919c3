import type { InstrumentEntries } from '../../instruments/instrument.ts';
import { blankLink, type EntryForm, type LinkEntries } from '../../sheet/entries.ts';
import type { LinkKind } from '../../sheet/sheet.ts';

/** Whether power goes through it, so that it has a loss. */
export const hasLoss = ({ kind }: Pick<InstrumentEntries, 'kind'>): boolean =>
  kind === 'pad' || kind === 'cable' || kind === 'amplifier';

/** A load is none of the kinds that take something away. */
const LINK_KIND = {
  meter: 'meter',
  pad: 'pad',
  cable: 'cable',
  amplifier: 'amplifier',
  load: 'other',
  other: 'other',
} as const satisfies Readonly<Record<InstrumentEntries['kind'], LinkKind>>;

/** In which form a link states it. */
function formOf({ basis, form, by }: InstrumentEntries): EntryForm {
  if (basis === 'dataSheet') return form;
  return by === 'nothing' ? 'expanded' : 'corrections';
}

/**
 * The texts of a link that states what the instrument does, its nominal loss as typed. A correction that holds for all frequencies and
 * levels is not in it; neither are the temperature of the day and the years since the calibration.
 */
export function asLink(
  entries: InstrumentEntries,
  { id, unit }: Pick<LinkEntries, 'id' | 'unit'>,
): LinkEntries {
  const { basis, by, amount, uncertainty, lower, upper, table, factor, freedom } = entries;
  const { ofReading, ofScale, fullScale, digits, step, floor, perKelvin, coldest, warmest, perYear } =
    entries;
  const calibrated = basis === 'calibration';
  return {
    ...blankLink(id),
    label: entries.label.trim(),
    kind: LINK_KIND[entries.kind],
    loss: hasLoss(entries) ? entries.loss : '0',
    form: formOf(entries),
    amount: calibrated ? uncertainty : amount,
    lower,
    upper,
    unit,
    percentOf: entries.percentOf,
    source: calibrated ? entries.source : 'specification',
    rated: entries.rated,
    ...(calibrated && { table, factor, freedom, by: by === 'level' ? 'level' : 'frequency' }),
    ...{ ofReading, ofScale, fullScale, digits, step, floor, perKelvin, coldest, warmest, perYear },
  };
}

import { type Calibration, calibrationOf } from '../../src/borrow/calibration.ts';
import type { Checked } from '../../src/borrow/checked.ts';
import { type Demonstration, demonstrationEntries } from '../../src/borrow/demonstration.ts';
import type { BorrowEntries } from '../../src/borrow/entries.ts';
import { type PadFound, padFromDc, padFromSwap } from '../../src/borrow/pad.ts';
import { readEntries } from '../../src/borrow/read-entries.ts';

/** Entries that must be usable, as they are computed with. */
export function checkedOf(entries: BorrowEntries): Checked {
  const { checked, problems } = readEntries(entries);
  if (checked === undefined) throw new Error(`wish usable entries, got ${JSON.stringify(problems)}`);
  return checked;
}

/** A prepared calibration with some texts changed, computed. */
export function calibrated(name: Demonstration, change: Partial<BorrowEntries> = {}): Calibration {
  const checked = checkedOf({ ...demonstrationEntries(name), ...change });
  if (checked.kind !== 'alternation') throw new Error(`wish an alternation, got ${checked.kind}`);
  const calibration = calibrationOf(checked);
  if (typeof calibration === 'string') throw new Error(`wish a calibration, got ${calibration}`);
  return calibration;
}

/** A prepared part with some texts changed, computed. */
export function part(name: 'dc' | 'swap', change: Partial<BorrowEntries> = {}): PadFound {
  const checked = checkedOf({ ...demonstrationEntries(name), ...change });
  if (checked.kind === 'alternation') throw new Error('wish a part, got an alternation');
  return checked.kind === 'dc' ? padFromDc(checked) : padFromSwap(checked);
}

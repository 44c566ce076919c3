import { sheetFragment } from '../../bench/address/address.ts';
import { setupStrings } from '../../bench/form/setup-strings.ts';
import { clubMeasurement, sisterMeasurement } from '../../sheet/club-measurement.ts';
import type { MethodKind } from '../../sheet/method.ts';

/** Whose numbers the bench opens with: those of the club's transmitter, or of its 145 MHz sister on the oscilloscope. */
export type Prepared = 'club' | 'sister';

/** A way from a lesson to the bench: what is said of it, and its address on this site. */
export interface BenchLink {
  readonly path: string;
  readonly text: string;
}

/**
 * The bench with a method chosen and a prepared measurement filled in, every field of it open to the reader's own.
 * @throws RangeError if the sister is asked for by another method than the oscilloscope, by which alone she was measured.
 */
export function benchLink({ method, of }: { method: MethodKind; of: Prepared }): BenchLink {
  if (of === 'sister' && method !== 'oscilloscope')
    throw new RangeError(`benchLink: the sister must be measured by oscilloscope, got ${method}`);
  const measurement = of === 'sister' ? sisterMeasurement() : clubMeasurement(method);
  const { name } = setupStrings.methods[method];
  const whose = of === 'sister' ? 'the sister’s numbers' : 'the club’s numbers';
  return {
    path: `/bench/#${sheetFragment(measurement)}`,
    text: `Open the bench: ${name.charAt(0).toLowerCase()}${name.slice(1)}, with ${whose} filled in`,
  };
}

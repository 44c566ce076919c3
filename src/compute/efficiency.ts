import { notNegative, type PowerW, positive, powerW, rangeError } from './quantity.ts';

/**
 * The power that a steady voltage and current bring: V I.
 * @throws RangeError unless both are finite and >= 0.
 * Source: P = U I (CEPT T/R 61-02, Annex 6, 1.9).
 */
export function dcPower({ volts, amperes }: { volts: number; amperes: number }): PowerW {
  return powerW(notNegative('dcPower', 'volts', volts) * notNegative('dcPower', 'amperes', amperes));
}

/**
 * How much of what goes in comes out, as a fraction: out over in. Both must be means over the same time; peak envelope power
 * over the mean power from the supply is no efficiency.
 * @throws RangeError unless input is above zero and output not above input.
 * Source: conservation of energy; CEPT T/R 61-02, Annex 6, 1.9.
 */
export function efficiency({ output, input }: { output: PowerW; input: PowerW }): number {
  positive('efficiency', 'input', input);
  if (output > input)
    throw rangeError({
      where: 'efficiency',
      wish: 'output must not be above input',
      got: `${output} above ${input}`,
    });
  return output / input;
}

import { thermometerAt, thermometerLine, withoutCovariance } from '../../sheet/thermometer.ts';
import { changeText, numberText, quantityText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { Answer } from '../parts/answer.ts';
import type { BorrowedState } from './spec.ts';
import { strings } from './strings.ts';

/** The answers for the GUM's thermometer, to the digits of its print. */
export function thermometerAnswers(
  style: Style,
  { temperature, origin }: BorrowedState,
): readonly [Answer, Answer, Answer] {
  const line = thermometerLine(origin);
  const found = thermometerAt(temperature, origin);
  const degrees = (value: number, decimals: number): string =>
    quantityText(style, { value, decimals, unit: 'degC' });
  const at = (celsius: number): string =>
    degrees(celsius, Number.isInteger(celsius) ? 0 : Number.isInteger(celsius * 10) ? 1 : 4);
  return [
    {
      figure: strings.uncertain({
        value: degrees(found.value, 4),
        u: degrees(found.standardUncertainty, 4),
      }),
      words: strings.predictionWords({
        at: at(temperature),
        degrees: numberText(style, { value: found.degreesOfFreedom, decimals: 0 }),
        beyond: found.extrapolated,
      }),
    },
    {
      figure: strings.line({
        height: degrees(line.intercept, 4),
        slope: changeText(style, { value: line.slope, decimals: 5, unit: 'degC' }),
        origin: at(origin),
      }),
      words: strings.lineWords({
        height: degrees(line.interceptUncertainty, 4),
        slope: degrees(line.slopeUncertainty, 5),
        correlation: numberText(style, { value: line.correlation, decimals: 3 }),
        scatter: degrees(line.residualDeviation, 4),
      }),
    },
    {
      figure: strings.apart(degrees(withoutCovariance(temperature, origin), 4)),
      words: strings.apartWords,
    },
  ];
}

import { thermometerAt, thermometerLine } from '../sheet/thermometer.ts';
import type { Check } from './check.ts';
import { figure } from './figure.ts';

const about20 = () => thermometerLine(20);
const aboutMean = () => thermometerLine(24.0085);
const at30 = () => thermometerAt(30, 20);

/** The figure that has this line in it. */
const tried = (state: string): NonNullable<Check['tried']> => ({
  path: '/learn/measuring/borrowing-a-calibration/',
  state: `it=t${state}&v=1`,
});

/** GUM H.3: calibration of a thermometer by a straight line. */
export const annexH3 = (): Check[] => [
  {
    id: 'gum-h3-line',
    clause: 'H.3.3',
    title: 'a line through eleven corrections has the printed intercept, slope and scatter',
    status: 'published',
    given: 'reference temperature 20 °C',
    figures: [
      figure('intercept', '-0.1712', '°C', () => about20().intercept),
      figure('u of the intercept', '0.0029', '°C', () => about20().interceptUncertainty),
      figure('slope', '0.00218', '', () => about20().slope),
      figure('u of the slope', '0.00067', '', () => about20().slopeUncertainty),
      figure('correlation of the two', '-0.930', '', () => about20().correlation),
      figure('scatter about the line', '0.0035', '°C', () => about20().residualDeviation),
    ],
    tried: tried(''),
  },
  {
    id: 'gum-h3-prediction',
    clause: 'H.3.4',
    title: 'the correction at 30 °C has the printed uncertainty, covariance included',
    status: 'published',
    figures: [
      figure('correction at 30 °C', '-0.1494', '°C', () => at30().value),
      figure('its u', '0.0041', '°C', () => at30().standardUncertainty),
      figure('its variance', '1.71', '10⁻⁵ °C²', () => 1e5 * at30().standardUncertainty ** 2),
      figure('degrees of freedom', '9', '', () => at30().degreesOfFreedom),
    ],
    tried: tried('&te=30'),
    note: 'Without the covariance of intercept and slope it would be 0.0073 °C (worked out here, not printed in the Guide).',
  },
  {
    id: 'gum-h3-centred',
    clause: 'H.3.5',
    title: 'taken about the mean temperature intercept and slope are not correlated',
    status: 'published',
    given: 'reference temperature 24.0085 °C',
    figures: [
      figure('intercept', '-0.1625', '°C', () => aboutMean().intercept),
      figure('u of the intercept', '0.0011', '°C', () => aboutMean().interceptUncertainty),
    ],
    tried: tried('&or=24.0085'),
  },
  {
    id: 'gum-h3-recomputed',
    clause: 'H.3',
    title: 'the line comes out to the digits of a calculation apart from this site',
    status: 'recomputed',
    figures: [
      figure('intercept', '-0.1712038', '°C', () => about20().intercept),
      figure('u of the intercept', '0.0028776', '°C', () => about20().interceptUncertainty),
      figure('slope', '0.0021827', '', () => about20().slope),
      figure('u of the slope', '0.00066794', '', () => about20().slopeUncertainty),
      figure('correlation of the two', '-0.93043', '', () => about20().correlation),
      figure('scatter about the line', '0.00349756', '°C', () => about20().residualDeviation),
      figure('correction at 30 °C', '-0.14937681', '°C', () => at30().value),
      figure('its u', '0.00413860', '°C', () => at30().standardUncertainty),
    ],
  },
];

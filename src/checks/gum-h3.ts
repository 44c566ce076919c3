import { fitLine, readLine } from '#compute';
import type { Check } from './check.ts';
import { figure } from './figure.ts';

const READINGS = `
21.521 -0.171
22.012 -0.169
22.512 -0.166
23.003 -0.159
23.507 -0.164
23.999 -0.165
24.513 -0.156
25.002 -0.157
25.503 -0.159
26.010 -0.161
26.511 -0.160`;

/** Temperature and correction of the thermometer, both in degrees Celsius. */
const points = () =>
  READINGS.trim()
    .split('\n')
    .map((line) => {
      const [x = Number.NaN, y = Number.NaN] = line.split(' ').map(Number);
      return { x, y };
    });

const about20 = () => fitLine({ points: points(), origin: 20 });
const aboutMean = () => fitLine({ points: points(), origin: 24.0085 });
const at30 = () => readLine({ line: about20(), at: 30 });

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

import { fitLine, serialCorrelation } from '#compute';
import type { Check, Figure } from './check.ts';
import { figure } from './figure.ts';
import { mavro, michelso, norris, numAcc1, numAcc2, numAcc3 } from './strd-data.ts';

/** How near a sum of doubles must come, relative to the certified value. */
const near = (of: Figure, relative: number, because: string): Figure => ({
  ...of,
  tolerance: { within: relative * Math.abs(Number(of.printed)), because },
});

const line = () => {
  const { x, y } = norris();
  return fitLine({ points: x.map((at, i) => ({ x: at, y: y[i] ?? Number.NaN })) });
};

const certified = (): Figure[] => [
  figure('intercept', '-0.262323073774029', '', () => line().intercept),
  figure('u of the intercept', '0.232818234301152', '', () => line().interceptUncertainty),
  figure('slope', '1.00211681802045', '', () => line().slope),
  figure('u of the slope', '0.000429796848199937', '', () => line().slopeUncertainty),
  figure('scatter about the line', '0.884796396144373', '', () => line().residualDeviation),
];

const fitted = (): Check => ({
  id: 'strd-norris',
  clause: 'Norris',
  title: 'a line through 36 points has the certified coefficients and uncertainties',
  status: 'published',
  figures: certified().map((one) =>
    near(one, 1e-12, 'arithmetic of doubles; the intercept is a small difference of large means'),
  ),
});

const serial = (): Check => ({
  id: 'strd-serial-correlation',
  clause: 'autocorrelation at lag 1',
  title: 'readings resemble those before them as much as certified',
  status: 'published',
  figures: [
    near(
      figure('Mavro', '0.937989183438248', '', () => serialCorrelation(mavro())),
      1e-11,
      'the readings as doubles',
    ),
    near(
      figure('Michelso', '0.535199668621283', '', () => serialCorrelation(michelso())),
      1e-11,
      'the readings as doubles',
    ),
    figure('NumAcc1', '-0.5', '', () => serialCorrelation(numAcc1())),
    figure('NumAcc2', '-0.999', '', () => serialCorrelation(numAcc2())),
    figure('NumAcc3', '-0.999', '', () => serialCorrelation(numAcc3())),
  ],
});

/** NIST's data set for a straight line, and the serial correlation of the univariate sets. */
export const strdLine = (): Check[] => [fitted(), serial()];

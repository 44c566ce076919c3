import { type FittedLine, fitLine, type Prediction, readLine } from '#compute';

/** A thermometer's readings and the corrections found there, in degrees Celsius: the example of JCGM 100 (GUM), H.3. */
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

/** Temperature shown, and correction. */
export const thermometerPoints = (): readonly { readonly x: number; readonly y: number }[] =>
  READINGS.trim()
    .split('\n')
    .map((line) => {
      const [x = Number.NaN, y = Number.NaN] = line.split(' ').map(Number);
      return { x, y };
    });

/** The line through them, its height taken at a temperature of one's choice. */
export const thermometerLine = (originC: number): FittedLine =>
  fitLine({ points: thermometerPoints(), origin: originC });

/** The correction at a temperature; so far from the points as one dares, as the GUM does. */
export const thermometerAt = (temperatureC: number, originC: number): Prediction =>
  readLine({ line: thermometerLine(originC), at: temperatureC });

/** The same if height and slope were taken for independent, which they are about the mean temperature alone. */
export function withoutCovariance(temperatureC: number, originC: number): number {
  const { interceptUncertainty, slopeUncertainty } = thermometerLine(originC);
  return Math.hypot(interceptUncertainty, (temperatureC - originC) * slopeUncertainty);
}

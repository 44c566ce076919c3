import type { Spectrum } from './spectrum.ts';

/**
 * Share below and density of a sum, at a place measured from its centre, from the terms of its Fourier series (GUM
 * Supplement 1 names the analytical and numerical roads in 5.1; this one inverts the characteristic function, after
 * J. Gil-Pelaez, Biometrika 38 (1951), 481 to 482, with equal steps). With `whole` the series holds all of the sum, otherwise the
 * difference to a reference of the same total.
 */
export function seriesOf(
  { re, im, count, period }: Spectrum,
  whole: boolean,
): (x: number) => { value: number; slope: number } {
  const step = (2 * Math.PI) / period;
  const reShare = re.map((value, j) => value / (Math.max(j, 1) * step));
  const imShare = im.map((value, j) => value / (Math.max(j, 1) * step));
  let atLowerEnd = 0;
  for (let j = 1; j <= count; j++) atLowerEnd += (j % 2 === 0 ? -1 : 1) * (imShare[j] as number);
  return (x) => {
    const turnCosine = Math.cos(step * x);
    const turnSine = Math.sin(step * x);
    let c = 1;
    let s = 0;
    let share = 0;
    let density = 0;
    for (let j = 1; j <= count; j++) {
      const next = c * turnCosine - s * turnSine;
      s = s * turnCosine + c * turnSine;
      c = next;
      share += (reShare[j] as number) * s - (imShare[j] as number) * c;
      density += (re[j] as number) * c + (im[j] as number) * s;
    }
    return {
      value: (whole ? 0.5 + x / period : 0) + (2 / period) * (share - atLowerEnd),
      slope: (whole ? 1 / period : 0) + (2 / period) * density,
    };
  };
}

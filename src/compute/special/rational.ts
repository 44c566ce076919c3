/** Value of a polynomial at x by Horner's rule; coefficients from the highest power down. */
export function polynomial(x: number, coefficients: readonly number[]): number {
  let value = 0;
  for (const coefficient of coefficients) value = value * x + coefficient;
  return value;
}

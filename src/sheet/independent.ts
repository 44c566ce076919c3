/** One independent part of an uncertainty. */
export interface Part<Id extends string = string> {
  readonly id: Id;
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: number;
}

/** A part whose uncertainty is taken as known. */
export const known = <Id extends string>(id: Id, standardUncertainty: number): Part<Id> => ({
  id,
  standardUncertainty,
  degreesOfFreedom: Number.POSITIVE_INFINITY,
});

/** Standard uncertainty of plain limits, nothing else known (GUM 4.3.7). */
export const ofLimits = (halfWidth: number): number => halfWidth / Math.sqrt(3);
/** Standard uncertainty of U-shaped limits, as a mismatch has. */
export const ofUShape = (halfWidth: number): number => halfWidth / Math.SQRT2;

/** Independent parts put together: squared, added, and the root taken (GUM 5.1). */
export const combined = (parts: readonly Part[]): number =>
  Math.hypot(...parts.map(({ standardUncertainty }) => standardUncertainty));

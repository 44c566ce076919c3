/** Coverage factor of the expanded uncertainty for a bell, the convention of calibration certificates. */
export const COVERAGE_FACTOR = 2;

/**
 * The coverage probability that goes with it, 1 - 2 x (share of a bell beyond two standard deviations). All intervals hold it:
 * with few degrees of freedom the coverage factor is larger than 2 (GUM G.4), and propagation and whole distribution speak of
 * the same share.
 */
export const COVERAGE_PROBABILITY = 0.9544997361036416;

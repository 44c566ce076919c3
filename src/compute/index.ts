/** The one door to the computation: everything public goes through it, by name, from a list a subject; within those sorted by file. */

export * from './doors/chains.ts';
export * from './doors/comparisons.ts';
export * from './doors/quantities.ts';
export * from './doors/shapes.ts';
export * from './doors/sums.ts';
export * from './doors/verdicts.ts';

import type { Space } from '../../examples/example.ts';

/** In what the sum of an example is made, said of every one of them. */
export const spaceWords: Readonly<Record<Space, string>> = {
  decibels: 'The sum is made in decibels; watts come last, end by end.',
  watts: 'The sum is made in watts.',
  reflections: 'The sum is made in reflections, as parts of the wave’s voltage.',
  each: 'Each result above says in what it is made.',
  none: 'Nothing is propagated here: no uncertainties are stated.',
};

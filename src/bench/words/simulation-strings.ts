/** Words of the simulation on the bench while it is folded. */
export const simulationPartStrings = {
  heading: 'Trying it out',
  intro:
    'The fourth way to add up: every part drawn at random as its statement says, shared causes and mismatch included, added up, and that a million times (JCGM 101, clause 7).',
  fold: 'Simulate this point',
} as const;

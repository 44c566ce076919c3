/** Words of the stage. */
export const strings = {
  whatIf: (label: string): string => `${label} wrong by`,
  less: (step: string): string => `Less by ${step}`,
  more: (step: string): string => `More by ${step}`,
  prepared: 'Reset',
  back: 'Back',
  on: 'Next',
  states: 'What each rung adds',
  rung: 'Rung',
  adds: 'It adds',
  band: 'Band from the definition to here',
  now: 'What is shown',
  leave: 'Leave',
} as const;

/** Words of the stage. */
export const strings = {
  whatIf: (label: string): string => `What if the ${label.replace(/^The /, '')} were wrong by`,
  less: (step: string): string => `Less by ${step}`,
  more: (step: string): string => `More by ${step}`,
  prepared: 'As prepared',
  back: 'Back',
  on: 'On',
  leave: 'Leave the stage',
} as const;

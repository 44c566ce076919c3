/** Words of the controls by which a reader builds a chain; apart, as they are fetched when somebody asks for them. */
export const builder = {
  building: 'Your own chain: take rungs out, add others, name them',
  take: (label: string): string => `Take out ${label}`,
  takeShort: 'Take out',
  name: (count: number): string => `Name of your rung ${count}`,
  addLimits: 'Add a rung with limits',
  addCertificate: 'Add a rung with a certificate (U, k = 2)',
  own: (count: number): string => `Rung of your own ${count}`,
  full: 'The figure has room for no more rungs.',
} as const;

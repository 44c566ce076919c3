/** Words of the cautions. Numbers come in as finished text. */
export const cautionStrings = {
  heading: 'Before you key the transmitter',
  basis: ({ level, power }: { level: string; power: string }): string =>
    `Reckoned with ${level} (${power}), the most that specification or measurement allow, and every loss at the low end of its limits.`,
  load: 'The chain is the transmitter’s load. Key off before you take anything apart or put it together, and never key without the load.',
  noLoad: 'Nothing in this chain takes power away before the meter: the meter’s own input is then the load.',
  heat: ({ label, incident, heat }: { label: string; incident: string; heat: string }): string =>
    `${label}: gets ${incident} and turns ${heat} of it into heat`,
  rated: (rating: string): string => `rated ${rating}, so it stands that`,
  overrated: (rating: string): string => `rated ${rating} only: too little`,
  unrated: 'enter its rating to have it compared',
  input: (level: string): string => `The meter’s input gets ${level}`,
  margin: ({ margin, damage }: { margin: string; damage: string }): string =>
    `${margin} below the ${damage} it stands`,
  beyond: ({ margin, damage }: { margin: string; damage: string }): string =>
    `${margin} above the ${damage} it stands: it would be damaged`,
  noDamageLevel: 'enter what it stands to have it compared',
  without: ({ label, level }: { label: string; level: string }): string =>
    `Without “${label}” it gets ${level}`,
  exceeded: (count: number): string =>
    count === 1
      ? 'One caution concerns this chain: see “Before you key the transmitter”.'
      : `${count} cautions concern this chain: see “Before you key the transmitter”.`,
} as const;

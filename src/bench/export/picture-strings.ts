import { SITE_NAME } from '../../text/site-name.ts';

/** Words drawn into the picture that is saved. */
export const pictureStrings = {
  title: ({ title, point }: { title: string; point: string }): string => `${title}, ${point}`,
  result: ({ level, coverage, watts }: { level: string; coverage: string; watts: string }): string =>
    `${level} (${coverage}) · ${watts}`,
  exact: ({ level, watts }: { level: string; watts: string }): string => `${level} · ${watts}`,
  legend:
    'Strip: expanded uncertainty. End marks: worst case, open where a part has no limit. Axes: dBm below, watts above.',
  assumes:
    'Assumed: parts that share no named cause are independent; losses and readings as stated on the sheet.',
  assumed: (assumptions: readonly string[]): string =>
    `Assumed: ${assumptions.join(' ')} All figures given are invented.`,
  made: ({ address, version }: { address: string; version: string }): string =>
    `Worked out with ${SITE_NAME} ${version}, ${address}`,
  bench: 'bench',
} as const;

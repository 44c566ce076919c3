import type { Comparison } from './compared.ts';

/** Words of the page. Numbers come in as finished text. */
export const strings = {
  page: {
    link: 'compare measurements',
    title: 'Compare measurements',
    description:
      'Two or more measurements of one transmitter side by side: do they agree once what they share is taken out, and what do they say together?',
    heading: 'Compare measurements',
    lead: 'One transmitter, measured in two ways or more. Do the results agree, and what do they say together? What both share, the same pad or the same transmitter warming up, cannot make them differ.',
    note: 'Everything is computed here and stays in your browser. The two sheets below are invented.',
    noScript:
      'Putting in sheets of your own needs JavaScript; the invented comparison below is complete without it.',
  },
  caution:
    'Key off and prove that there is no RF before you change from one method to the next. Same supply, same warming up, same keying: otherwise you compare two transmitters.',
  allCautions: 'All cautions of this site',
  heading: 'Side by side',
  agree: 'They agree',
  disagree: 'They do not agree',
  difference: ({ first, second }: { first: string; second: string }): string => `“${first}” less “${second}”`,
  ratio: ({ ratio, allowed }: { ratio: string; allowed: string }): string =>
    `normalised error ${ratio}: the difference over its expanded uncertainty, ${allowed}, what they share taken out; up to 1 they agree`,
  exact: {
    alike: 'nothing that is not shared makes them differ',
    apart:
      'they differ, and all that they may be wrong by is marked as shared: a mark is wrong, or a link is missing',
  },
  worst: (ratio: string, pair: string): string =>
    `the farthest apart are ${pair}, with a normalised error of ${ratio}`,
  worstBeyond: (pair: string): string =>
    `${pair} differ, and all that they may be wrong by is marked as shared: a mark is wrong, or a link is missing`,
  infinite: 'infinite',
  together: (watts: string, k: string): string =>
    `${watts}: the mean of least uncertainty, what they share counted whole; U with k\u00a0=\u00a0${k}`,
  noMean: 'No common value',
  noMeanWords:
    'results that contradict each other have no mean that means anything: find out which one is wrong first',
  tooFew: 'Two usable sheets are needed to compare.',
  refused: (why: string): string =>
    `What is marked as shared cannot move together: ${why}. Take a mark away.`,
  sharedPart: (amount: string): string =>
    `They share ${amount} (standard uncertainty): the mean can never be better than that.`,
  nothingShared: 'They share nothing that you marked: their differences are taken as independent.',
  weights: (list: string): string => `Weights in the mean: ${list}.`,
  differing: {
    power: 'They do not mean the same power (carrier, peak envelope, mean).',
    delivery: 'They do not mean power delivered in the same way.',
    keying: 'The transmitter was not keyed in the same way.',
    frequency: 'They were taken at different frequencies.',
  } satisfies Readonly<Record<Comparison['differing'][number], string>>,
  differingLead: 'These sheets do not measure the same thing:',
  figure: {
    name: 'The results on one axis',
    description: (summary: string): string => `A strip a sheet: its interval. ${summary}`,
    mean: 'Together',
    caption:
      'Strips: U (k about 2) about each result. Firm lines and hatching: the specification in each sheet.',
  },
  table: {
    caption: 'Pair by pair',
    pair: 'Pair',
    difference: 'Difference',
    expanded: 'U of it',
    ratio: 'Normalised error',
    verdict: 'Verdict',
  },
  shared: {
    heading: 'What they share',
    help: 'Mark what is one and the same thing in all of these sheets: the same pad, the same load, the same calibration behind both, the transmitter’s own drift. It cancels from the difference and stays in the mean.',
    cause: (name: string, sheets: number): string => `cause “${name}”, named in ${sheets} sheets`,
    link: (name: string, sheets: number): string => `“${name}”, in ${sheets} sheets`,
    none: 'No cause or link has the same name in two of them.',
  },
  form: 'What is compared',
  sheets: 'The sheets',
  sheet: (number: number): string => `Sheet ${number}`,
  address: 'Address of the sheet',
  addressHelp:
    'Copy it from the bench: the whole address, or what stands after #. “club 1” and “club 2” stand for the two invented sheets.',
  point: 'Point',
  add: 'Add a sheet',
  remove: (number: number): string => `Take sheet ${number} away`,
  begin: 'Begin with',
  demonstration: 'The club’s two measurements',
  fresh: 'Two empty rows',
  undo: 'Undo',
  redo: 'Redo',
  tooLong: 'This is too long for an address: the address of the page does not carry it.',
  problems: {
    reading: 'The address is being read …',
    none: 'No address yet: copy one from the bench and paste it here.',
    noSheet: 'This is no address of a sheet: one from the bench is expected, with # and the sheet behind it.',
    damaged: (what: string): string => `The address was damaged on its way: ${what}`,
    unusable: (what: string): string => `This sheet cannot be used yet. ${what}`,
    noPoint: 'This sheet has no such point: choose another one.',
    outOfRange: (why: string): string => `The method gives no number here: ${why}`,
  },
  kept: {
    open: 'Take a sheet that is kept in this browser',
    which: 'Kept sheets',
    take: 'Take this sheet',
    none: 'No sheet is kept in this browser yet.',
    refused: 'This browser lets nothing be read here: paste the address of the sheet instead.',
    tooLong: 'This sheet is too long for an address and cannot be compared here.',
    unnamed: 'without a title',
  },
  cannot: {
    heading: 'What this cannot do',
    list: [
      'Agreement proves neither of them right: two methods can share an error that nobody named.',
      'It takes out only what you mark as shared. What is shared and not marked makes the mean look better than it is.',
      'It weighs what the sheets state. A method whose uncertainty is stated too small pulls the mean to itself.',
      'It cannot mend results that contradict each other: no average makes a blunder good.',
    ],
  },
} as const;

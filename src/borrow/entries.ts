/** What is calibrated: one's own instrument against a lent one in turns, or a pad or cable, at DC or swapped in and out. */
export const BORROW_KINDS = ['alternation', 'dc', 'swap'] as const;
export type BorrowKind = (typeof BORROW_KINDS)[number];

/** What the places of a calibration differ by. */
export const ALONGS = ['level', 'frequency'] as const;
export type Along = (typeof ALONGS)[number];

/** How the lender's uncertainty is stated: U of a certificate with drift since, or the limits of a data sheet; never both. */
export const LENDER_FORMS = ['expanded', 'rectangular'] as const;
export type LenderForm = (typeof LENDER_FORMS)[number];

/** One level or frequency at which readings were taken in turn. */
export interface PlaceEntries {
  /** Unique within the page; never typed. */
  readonly id: string;
  /** Level or frequency; a level may be left empty: then it is the mean of what one's own instrument shows. */
  readonly at: string;
  /** Reference, own, reference, own, reference: one to a line, or a round of three to a line. */
  readonly readings: string;
}

/** Texts of the page: letter by letter as typed. Those of a kind that is not chosen are kept. */
export const TEXT_KEYS = [
  'own',
  'lender',
  'date',
  'conditions',
  'amount',
  'factor',
  'lenderDrift',
  'resolution',
  'temperature',
  'mismatch',
  'other',
  'scatter',
  'repeats',
  'claimed',
  'later',
  'laterAt',
  'laterTemperature',
  'laterMismatch',
  'linearity',
  'part',
  'voltsIn',
  'voltsOut',
  'percent',
  'step',
  'load',
  'loadPercent',
  'rated',
  'without',
  'with',
  'straightness',
  'sourceSwr',
  'receiverSwr',
  'partSwr',
] as const;
export type BorrowTextKey = (typeof TEXT_KEYS)[number];

/** Everything that stands in the form. */
export interface BorrowEntries extends Readonly<Record<BorrowTextKey, string>> {
  readonly kind: BorrowKind;
  readonly along: Along;
  readonly stated: LenderForm;
  /** Whether one meter read both voltages on one range. */
  readonly oneMeter: 'yes' | 'no';
  /** At least one. */
  readonly places: readonly PlaceEntries[];
}

/** More places than this no reader types, and no address bears. */
export const MOST_PLACES = 30;

/** A form that nobody has said anything in yet. */
export function blankEntries(kind: BorrowKind): BorrowEntries {
  const texts = Object.fromEntries(TEXT_KEYS.map((key) => [key, ''])) as Record<BorrowTextKey, string>;
  return {
    ...texts,
    kind,
    along: 'level',
    stated: 'expanded',
    oneMeter: 'yes',
    factor: '2',
    load: '50',
    places: [{ id: 'place1', at: '', readings: '' }],
  };
}

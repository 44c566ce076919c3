/** What the choice of a decimal sign holds for, where nothing is copied. */
export const FIELDS_HELP =
  'For the numbers that this site shows and puts into fields. What you typed stays as typed, and fields take either sign; addresses, and what is only spoken, keep their point. Kept in this browser; where that is refused, until you leave the page.';

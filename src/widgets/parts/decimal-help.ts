/** What the choice of a decimal sign holds for, where nothing but fields hangs on it. */
export const FIELDS_HELP =
  'For the numbers that this site puts into fields. What you typed stays as typed, and fields take either sign; answers on this page keep their point, those of lessons and examples follow. Kept in this browser; where that is refused, until you leave the page.';

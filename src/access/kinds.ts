/** A kind of page: made by one route, in one frame, so that what is found on one of them is found on all. */
export interface PageKind {
  readonly name: string;
  /** The addresses of all pages of the kind, without the base path. */
  readonly paths: RegExp;
}

/** Every kind of page of this site. The build is checked for pages that belong to none, and for kinds without a page. */
export const pageKinds: readonly PageKind[] = [
  { name: 'Start page', paths: /^\/$/ },
  { name: 'List of lessons', paths: /^\/learn\/$/ },
  { name: 'Lesson', paths: /^\/learn\/[^/]+\/[^/]+\/$/ },
  { name: 'Lesson on the stage', paths: /^\/stage\/learn\/[^/]+\/[^/]+\/$/ },
  { name: 'List of worked examples', paths: /^\/examples\/$/ },
  { name: 'Worked example', paths: /^\/examples\/[^/]+\/$/ },
  { name: 'Worked example on the stage', paths: /^\/stage\/examples\/[^/]+\/$/ },
  { name: 'Bench', paths: /^\/bench\/$/ },
  { name: 'Kept sheets', paths: /^\/bench\/sheets\/$/ },
  { name: 'Instruments', paths: /^\/bench\/instruments\/$/ },
  { name: 'Borrowing a calibration', paths: /^\/bench\/borrow\/$/ },
  { name: 'Comparing results', paths: /^\/bench\/compare\/$/ },
  { name: 'Practice', paths: /^\/practice\/$/ },
  { name: 'Questions of a topic', paths: /^\/practice\/(?!revision|paper|worksheet)[^/]+\/$/ },
  { name: 'Revision', paths: /^\/practice\/revision\/$/ },
  { name: 'Mock paper', paths: /^\/practice\/paper\/$/ },
  { name: 'Worksheet', paths: /^\/practice\/worksheet\/$/ },
  { name: 'Question by itself', paths: /^\/practice\/q\/[^/]+\/$/ },
  { name: 'Putting a talk together', paths: /^\/stage\/compose\/$/ },
  { name: 'Talk of parts', paths: /^\/stage\/talk\/$/ },
  { name: 'Figure for other people’s pages', paths: /^\/embed\/[^/]+\/$/ },
  { name: 'Words', paths: /^\/reference\/words\/$/ },
  { name: 'Formula sheet', paths: /^\/reference\/formulas\/[^/]+\/$/ },
  { name: 'Tables to print', paths: /^\/reference\/tables\/$/ },
  { name: 'Published checks', paths: /^\/reference\/checks\/([^/]+\/)?$/ },
  { name: 'Page of text', paths: /^\/(about|reference(\/(?!words|tables|checks)[^/]+)?)\/$/ },
  { name: 'Search', paths: /^\/search\/$/ },
  { name: 'Page for wrong addresses', paths: /^\/404\.html$/ },
];

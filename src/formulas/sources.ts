/** Kind of a source: a standard or recommendation, a book or table, mathematics, or what everybody does. */
export type SourceKind = 'standard' | 'reference' | 'derived' | 'commonPractice';

/** A source that formulas cite. */
export interface SourceEntry {
  readonly kind: SourceKind;
  readonly title: string;
  /** Number and year, where it has them. */
  readonly edition?: string;
}

/** The register of sources, by the id that rows use. */
export const SOURCES = {
  gum: {
    kind: 'standard',
    title: 'Guide to the expression of uncertainty in measurement (GUM)',
    edition: 'JCGM 100:2008',
  },
  gumSimulation: {
    kind: 'standard',
    title: 'Supplement 1 to the GUM: propagation of distributions using a Monte Carlo method',
    edition: 'JCGM 101:2008',
  },
  gumSeveralOutputs: {
    kind: 'standard',
    title: 'Supplement 2 to the GUM: extension to any number of output quantities',
    edition: 'JCGM 102:2011',
  },
  conformity: {
    kind: 'standard',
    title: 'The role of measurement uncertainty in conformity assessment',
    edition: 'JCGM 106:2012',
  },
  vocabulary: {
    kind: 'standard',
    title: 'International vocabulary of metrology (VIM)',
    edition: 'JCGM 200:2012',
  },
  decisionRules: {
    kind: 'standard',
    title: 'Guidelines on decision rules and statements of conformity',
    edition: 'ILAC-G8:09/2019',
  },
  proficiency: {
    kind: 'standard',
    title: 'Conformity assessment: requirements for proficiency testing providers',
    edition: 'ISO/IEC 17043',
  },
  siBrochure: { kind: 'standard', title: 'The International System of Units', edition: '9th edition' },
  radioRegulations: { kind: 'standard', title: 'ITU Radio Regulations', edition: 'Article 1' },
  decibelUse: {
    kind: 'standard',
    title: 'Use of the decibel and the neper in telecommunications',
    edition: 'ITU-R V.574-5',
  },
  morseTiming: { kind: 'standard', title: 'International Morse code', edition: 'ITU-R M.1677' },
  neper: { kind: 'reference', title: 'IUPAC Compendium of chemical terminology', edition: 'entry "neper"' },
  referenceTemperature: {
    kind: 'standard',
    title: 'Standard reference temperature for geometrical properties',
    edition: 'ISO 1:2016',
  },
  syllabus: { kind: 'standard', title: 'HAREC examination syllabus', edition: 'CEPT T/R 61-02, Annex 6' },
  yard: { kind: 'reference', title: 'Addendum to NBS Circular 572', edition: '1959' },
  mathematicalFunctions: { kind: 'reference', title: 'NIST Digital Library of Mathematical Functions' },
  statistics: { kind: 'reference', title: 'NIST/SEMATECH e-Handbook of Statistical Methods' },
  weightedMean: {
    kind: 'reference',
    title: 'R. T. Birge: The calculation of errors by the method of least squares',
    edition: 'Phys. Rev. 40 (1932)',
  },
  derived: { kind: 'derived', title: 'Follows by mathematics' },
  commonPractice: { kind: 'commonPractice', title: 'Common practice of the trade, no citable source' },
} as const satisfies Record<string, SourceEntry>;

/** Id of a source. */
export type SourceId = keyof typeof SOURCES;

/** Where something is from in one line: title, edition and clause of each source. */
export const sourcesText = (
  sources: readonly { readonly of: SourceId; readonly clause?: string }[],
): string =>
  sources
    .map(({ of, clause }) => {
      const source: SourceEntry = SOURCES[of];
      return [source.title, source.edition, clause].filter(Boolean).join(', ');
    })
    .join('; ');

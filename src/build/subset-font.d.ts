/** The part of subset-font that the build uses; the package brings no types. */
declare module 'subset-font' {
  interface Options {
    readonly targetFormat: 'woff2' | 'truetype';
    /** Tags of the layout features that stay; all unless given. */
    readonly keepFeatures?: readonly string[];
    /** Whether what fits outlines to few dots goes. */
    readonly noHinting?: boolean;
    readonly variationAxes?: Record<string, { readonly min: number; readonly max: number }>;
  }
  export default function subsetFont(
    font: Uint8Array,
    characters: string,
    options: Options,
  ): Promise<Uint8Array>;
}

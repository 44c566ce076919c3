/** The part of subset-font that `fonts.mjs` uses; the package brings no types. */
declare module 'subset-font' {
  interface Options {
    readonly targetFormat: 'woff2' | 'truetype';
    readonly variationAxes?: Record<string, { readonly min: number; readonly max: number }>;
  }
  export default function subsetFont(
    font: Uint8Array,
    characters: string,
    options: Options,
  ): Promise<Uint8Array>;
}

/**
 * Symbols of units behind a number, and signs, that a voice spells out, leaves out or reads as something else. Symbols of quantities
 * (`k`, `U`, `s`) and abbreviations that are said letter by letter (RMS, SWR, DC, RF, SI) are words.
 */
export const BARE =
  /(?<=\d[\s\u00a0]?)(?:dB[mWidcv\u00b5]?|[\u00b5\u03bcmknpGM]?(?:W|V|A|Hz|\u03a9)|Vpp|ppm|[\u00b5\u03bcmknc]m|ns|ms|kg|mg|K|J|N|\u00b0C)(?![\p{L}\d])|[\u00b1\u2212\u00d7\u00f7%\u03a9\u00b5\u03bc\u2248\u2264\u2265\u00b2\u00b3\u207b\u00b9\u221a]|\d ?\/ ?\d/u;

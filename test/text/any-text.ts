import fc from 'fast-check';

const LAST_CODE_POINT = 0x10ffff;

/**
 * Text of any code points, lone surrogates and controls included, half of them from ASCII. Cheaper than fast-check's own
 * `binary` unit, which takes seconds to set up.
 */
export const anyText = (maxLength = 30): fc.Arbitrary<string> =>
  fc
    .array(
      fc
        .oneof(fc.integer({ min: 0, max: 0x7f }), fc.integer({ min: 0, max: LAST_CODE_POINT }))
        .map((codePoint) => String.fromCodePoint(codePoint)),
      { maxLength },
    )
    .map((chars) => chars.join(''));

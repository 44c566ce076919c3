/** Sentences about files. What stands in a file comes in as finished text. */
export const exchangeStrings = {
  wholeFile: 'The file',
  nothing: 'nothing',
  aList: 'a list',
  anObject: 'an object in braces',
  wishText: (got: string): string => `a text in quotation marks is expected here, and ${got} stands there.`,
  wishNumber: (got: string): string => `a number is expected here, and ${got} stands there.`,
  wishWithin: ({ got, limit, isLeast }: { got: string; limit: string; isLeast: boolean }): string =>
    `${got} stands there; ${isLeast ? 'at least' : 'at most'} ${limit} is allowed.`,
  wishList: (got: string): string => `a list in square brackets is expected here, and ${got} stands there.`,
  wishObject: (got: string): string => `an object in braces is expected here, and ${got} stands there.`,
  wishChoice: ({ got, choices }: { got: string; choices: string }): string =>
    `${got} stands there; one of ${choices} is expected.`,
  tooLong: ({ length, most }: { length: number; most: number }): string =>
    `the text has ${length} letters, and at most ${most} fit.`,
  tooMany: ({ count, most }: { count: number; most: number }): string =>
    `${count} are too many: at most ${most} fit.`,
  unfit: 'what stands there cannot be used.',
  unknown: (place: string): string => `${place} means nothing here and was left out.`,
  moreUnknown: (count: number): string =>
    count === 1
      ? 'One more thing in the file means nothing here.'
      : `${count} more things in the file mean nothing here.`,
  tooLarge: ({ size, most }: { size: string; most: string }): string =>
    `The file has ${size}; files of up to ${most} are opened here. Nothing was changed.`,
  tooLargeToSave: ({ size, most }: { size: string; most: string }): string =>
    `This would make a file of ${size}, and files of up to ${most} can be opened again. Take something out first, a long column of readings for example.`,
  unreadable: 'The browser could not read this file.',
  empty: 'The file is empty.',
  otherKind: (kind: string): string =>
    `This is ${kind}, not a file that was saved here and can be opened again: those end in “.json”.`,
  noJson: 'The file is not one that was saved here: it is no JSON text.',
  cutOff: 'The file was saved here, but it was changed or cut off on its way: it cannot be read to its end.',
  noMark: 'The file is JSON, but not one that was saved here.',
  noVersion: 'The file does not say which version of the format it has.',
  newer: ({ version, known }: { version: number; known: number }): string =>
    `The file was made by a later version of this site: its format is ${version}, and this page reads up to ${known}. Nothing was changed; keep the file, and open it with the newer page.`,
  olderLost: (version: number): string => `Format ${version} cannot be read here.`,
  holdsNothing: 'There is nothing in the file.',
} as const;

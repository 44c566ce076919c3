import {
  ADJUSTED_AT_DBM,
  clubMeter,
  correctionAt,
  errorDb,
  knownTo,
  type MeterUse,
  verified,
} from '../sheet/own-meter.ts';
import { plusMinusText } from '../text/deviation-text.ts';
import { decimalsFor } from '../text/place.ts';
import { changeText, levelText } from '../text/quantity-text.ts';
import type { Question } from './question.ts';

const change = (value: number): string => changeText('shown', { value, decimals: 2, unit: 'dB' });
const level = (levelDbm: number, decimals: number): string => levelText('shown', { levelDbm, decimals });

function expandedOf(use: MeterUse): number {
  const found = knownTo(use);
  if (found === undefined) throw new RangeError('expandedOf: a band must be known, got none');
  return found.propagation.expanded;
}

const band = (halfWidth: number): string =>
  plusMinusText('shown', { halfWidth, decimals: decimalsFor(halfWidth), unit: 'dB' });

/** The guess that opens the lesson: what did the laboratory change? */
export function meterChanged(): Question {
  const use = clubMeter();
  const correction = change(correctionAt(use.readingDbm));
  return {
    id: 'meter-what-changed',
    stem: `The club’s meter comes back from a laboratory with a certificate: at ${level(use.readingDbm, 0)} the correction is ${correction}. What did the laboratory change on the meter?`,
    answer: 'b',
    worked: `Calibration is a comparison (VIM 2012, 2.39). The meter shows what it showed before, ${change(errorDb(use))} off at this reading; what is new is that somebody knows it, and how well. Adding ${correction} is left to whoever reads it.`,
    options: [
      {
        id: 'a',
        text: 'It was adjusted: now it reads right.',
        reply:
          'That would be an adjustment. A table of corrections is the sign that none was made: it says what is still to be added.',
      },
      {
        id: 'b',
        text: 'Nothing. It reads as it did, and there is a table of what to add.',
        reply: 'The value is in the paper, and only for those who use it.',
      },
      {
        id: 'c',
        text: 'It was found good enough, and got its sticker.',
        reply:
          'Good enough for what? That question needs a limit and is called verification. The certificate gives numbers.',
      },
      {
        id: 'd',
        text: 'It was made more precise: its readings scatter less.',
        reply: 'Comparing does nothing to the scatter. It finds what scatter hides: the error that stays.',
      },
    ],
  };
}

/** How a correction is used. */
export function applyCorrection(): Question {
  const use = { ...clubMeter(), readingDbm: -6, months: 0 };
  const correction = correctionAt(use.readingDbm);
  const expanded = expandedOf(use);
  const corrected = (halfWidth: number): string =>
    `${level(use.readingDbm + correction, decimalsFor(halfWidth))} ${band(halfWidth)}`;
  return {
    id: 'meter-apply',
    stem: `The meter, fresh from its calibration, shows ${level(use.readingDbm, 1)}. By the table the correction there is ${change(correction)}; certificate and display together leave U = ${band(expanded).slice(1)} (k = 2). What do you write down?`,
    answer: 'a',
    worked: `A correction is added to the reading: ${level(use.readingDbm, 1)} ${change(correction)} is ${level(use.readingDbm + correction, 2)}. The error is then gone from the result; what stays is how well it was known, ${band(expanded)}.`,
    options: [
      {
        id: 'a',
        text: corrected(expanded),
        reply: 'Corrected, and only the uncertainty of the correction kept.',
      },
      {
        id: 'b',
        text: `${level(use.readingDbm - correction, decimalsFor(expanded))} ${band(expanded)}`,
        reply:
          'The sign is turned: that is the error taken for the correction, and it doubles what it should take away.',
      },
      {
        id: 'c',
        text: `${level(use.readingDbm, 2)} ${band(correction + expanded)}`,
        reply:
          'The error is known and could be taken away. Left in, it only makes the band wide, and lopsided in truth.',
      },
      {
        id: 'd',
        text: corrected(correction + expanded),
        reply: 'Corrected, and the correction kept in the band as well: paid for twice.',
      },
    ],
  };
}

/** Verification against a limit, with the uncertainty in between. */
export function meterVerified(): Question {
  const use = { ...clubMeter(), permissibleDb: 0.3 };
  const expanded = expandedOf(use);
  const limit = plusMinusText('shown', { halfWidth: use.permissibleDb, decimals: 2, unit: 'dB' });
  const judged = verified(use);
  if (judged?.verdict !== 'cant-tell')
    throw new RangeError(`meterVerified: the verdict must be can't tell, got ${judged?.verdict}`);
  return {
    id: 'meter-verified',
    stem: `At ${level(use.readingDbm, 0)} the meter’s error is ${change(errorDb(use))}, known to ${band(expanded)} (k = 2). Its data sheet promises a maximum permissible error of ${limit}. The rule agreed on beforehand leaves U as a guard band. Does the meter meet its limit there?`,
    answer: 'c',
    worked: `The error may lie anywhere from ${change(errorDb(use) - expanded)} to ${change(errorDb(use) + expanded)}. A part of that lies beyond ${limit}, a part within: this comparison can’t tell. A better one might.`,
    options: [
      {
        id: 'a',
        text: 'Yes: the error found is smaller than the limit.',
        reply:
          'The number found is, but the number found is not the error; it is known to U. Without a guard band this would pass with a good chance of being wrong.',
      },
      {
        id: 'b',
        text: 'No: error and uncertainty together pass the limit.',
        reply: 'They may pass it. To say no, all of the band would have to lie beyond.',
      },
      {
        id: 'c',
        text: 'This comparison can’t tell.',
        reply: 'A third answer, and an honest one.',
      },
      {
        id: 'd',
        text: 'Yes, once the correction is added to the readings.',
        reply:
          'The limit is a promise about what the meter shows. Correcting the result is wise and does not change the meter.',
      },
    ],
  };
}

/** What an adjustment costs. */
export function screwTurned(): Question {
  const { readingDbm } = clubMeter();
  return {
    id: 'meter-screw-turned',
    stem: `Somebody has turned the screw until the meter agreed with a borrowed source at ${level(ADJUSTED_AT_DBM, 0)}. What has to happen before a reading of ${level(readingDbm, 0)} may be given an uncertainty again?`,
    answer: 'd',
    worked:
      'An adjustment (VIM 2012, 3.11) makes another instrument of it: the old table no longer belongs to what is on the bench. It takes a calibration to find out how it reads now, level by level: “as found” before the screw is turned, “as left” after.',
    options: [
      {
        id: 'a',
        text: 'Nothing: it agrees now.',
        reply:
          'At one level, on one day, with a source whose own uncertainty nobody wrote down. The other levels moved as well, and not to where they belong.',
      },
      {
        id: 'b',
        text: `The correction at ${level(ADJUSTED_AT_DBM, 0)} is taken off every line of the old table.`,
        reply:
          'That is a fair guess of where it stands, if the screw moved every level alike. A guess is not a comparison.',
      },
      {
        id: 'c',
        text: 'The next calibration when the sticker runs out.',
        reply: 'The date belongs to the meter as it was. From the turn of the screw on there is no table.',
      },
      {
        id: 'd',
        text: 'A new calibration.',
        reply:
          'As left; and a pity if nobody made one before, as found: the old results can then no longer be mended.',
      },
    ],
  };
}

import {
  CERTIFICATE_FACTOR,
  clubPad,
  hardToTwirl,
  type Meaning,
  PLATEAU,
  type Stated,
  type StatedSlip,
  saidDb,
  shareWithin,
  standardDb,
} from '../../sheet/stated.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { decimalsFor } from '../../text/place.ts';
import { dbText, numberText, percentText } from '../../text/quantity-text.ts';
import { divisorText, ratioText } from '../../widgets/stated/words.ts';

/** Step of the display that the lesson speaks of, in dB. */
const STEP_DB = 0.1;

/** Numbers of the lesson on what is behind a ±, all from the limits of the club's pad. */
export function statedValues(): Readonly<Record<string, () => string>> {
  const pad = clubPad();
  const a = pad.halfWidthDb;
  const meant = (meaning: Meaning): Stated => ({ ...pad, meaning });
  const inner = 0.5 * standardDb({ ...pad, halfWidthDb: a / 2 }) ** 2;
  return {
    limit: () => band(a, 1),
    u: () => sized(standardDb(pad)),
    halfWay: () => sized(a / 2),
    innerShare: () => percent(100 * (inner / standardDb(pad) ** 2), 1),
    third: () => numberText('shown', { value: hardToTwirl(pad) / a ** 2, decimals: 3 }),
    share: () => percent(100 * (standardDb(pad) / a), 0),
    withinU: () => percent(100 * shareWithin(pad, 1), 0),
    twice: () => band(CERTIFICATE_FACTOR * standardDb(pad), 2),
    uPlateau: () => sized(standardDb(meant('plateau'))),
    plateauDivisor: () => divisorText('shown', meant('plateau')),
    plateau: () => percent(100 * PLATEAU, 0),
    uMiddle: () => sized(standardDb(meant('middle'))),
    uWave: () => sized(standardDb(meant('wave'))),
    uCertificate: () => sized(standardDb(meant('certificate'))),
    beyond: () => percent(100 * (1 - shareWithin(meant('certificate'), CERTIFICATE_FACTOR)), 1),
    step: () => dbText('shown', { db: STEP_DB, decimals: 1 }),
    stepHalf: () => band(STEP_DB / 2, 2),
    stepU: () => sized(standardDb({ ...pad, halfWidthDb: STEP_DB / 2 })),
    asStandard: () => slipText({ ...pad, slip: 'asStandard' }),
    asExpanded: () => slipText({ ...pad, slip: 'asExpanded' }),
    waveByThree: () => slipText({ ...meant('wave'), slip: 'rootThree' }),
  };
}

const sized = (db: number): string => dbText('shown', { db, decimals: decimalsFor(db) });
const percent = (value: number, decimals: number): string =>
  percentText('shown', { percent: value, decimals });
const band = (halfWidth: number, decimals: number): string =>
  plusMinusText('shown', { halfWidth, decimals, unit: 'dB' });

function slipText(of: Stated & { readonly slip: Exclude<StatedSlip, 'none'> }): string {
  const right = standardDb(of);
  const said = saidDb(of) ?? right;
  return `u = ${sized(said)} where it is ${sized(right)}: ${ratioText('shown', { said, right })}`;
}

import { oneDecibel, otherEnd, threePercentOfVolts, whichMean } from './bands.ts';
import { borrowedBeyond, borrowedHowGood, borrowedLater, borrowedRound } from './borrowed.ts';
import { betterLaboratory, certificateTwice, weakestRung, whatIsTraceable } from './chain.ts';
import { heatHow, heatKeyed, heatWaiting, heatWorth } from './dc-heat.ts';
import { detectorAddBack, detectorHarmonic, detectorLow, detectorWhichErrs } from './detector.ts';
import { fourTimes, oneReading, threeReadings, whatIsCured } from './few-readings.ts';
import { howLong, oneInstrument, roomWarm, whatHappened } from './gauge-blocks.ts';
import { inLineNet, inLineRange, inLineScale, inLineSwr } from './in-line.ts';
import { joinsNeedle, joinsProbe, joinsSquare, joinsWhich } from './joined.ts';
import { levelsApart, throughTheChain, twoTransmitters, whatIsNegative } from './levels.ts';
import { lineAtInput, lineBack, lineErp, lineHeat } from './line.ts';
import { beyondHalf, likeliestPlace, oneBox, whichBell } from './link-sum.ts';
import { applyCorrection, meterChanged, meterVerified, screwTurned } from './own-meter.ts';
import { padsMatch, padsOrder, padsOverload, padsWorth } from './pads.ts';
import { worstCertificate, worstEight, worstGuess, worstSum } from './pads-in-a-row.ts';
import { powerEfficiency, powerMeter, powerReflected, powerTones } from './power.ts';
import type { Question } from './question.ts';
import { behindTwoPads, doublings, seventeen, twiceTheVolts } from './ratios.ts';
import { anglesGuess, anglesLimits, anglesShare, anglesSum } from './right-angles.ts';
import { scopeFullScale, scopeHowSure, scopeRange, scopeWhatHelps } from './scope.ts';
import { sharedDifference, sharedMean, sharedResistors, sharedTwoPads } from './shared.ts';
import { spendEnough, spendHalved, spendOnWhat, spendReadings } from './spend.ts';
import { statedCertificate, statedDisplay, statedLumps, statedMismatch } from './stated.ts';
import { traceHeight, traceLoad, tracePercent, traceWatts } from './trace.ts';
import { lossNearNothing, meanOfWatts, moreTrials, slopeOfNothing } from './tries.ts';
import { finerMarks, frameMisfit, whichWord, whyNoFit } from './two-rules.ts';
import { changeOfWatt, chargesOfWatt, exactConstants, whatCounts } from './unit-tree.ts';
import { verdictAtLimit, verdictEdge, verdictOfEvening, verdictWhoPays } from './verdict.ts';
import { backHidden, backHowMuch, backNet, backReturnLoss } from './what-comes-back.ts';

import { writingBrackets, writingFew, writingPlusMinus, writingRounded } from './writing.ts';

const QUESTIONS: Readonly<Record<string, () => Question>> = {
  'bands-mean': whichMean,
  'bands-other-end': otherEnd,
  'bands-three-percent': threePercentOfVolts,
  'bands-one-decibel': oneDecibel,
  'levels-difference': levelsApart,
  'levels-what-is-negative': whatIsNegative,
  'levels-through-the-chain': throughTheChain,
  'levels-two-transmitters': twoTransmitters,
  'rules-why-no-fit': whyNoFit,
  'rules-misfit-grows': frameMisfit,
  'rules-which-word': whichWord,
  'rules-finer-marks': finerMarks,
  'meter-what-changed': meterChanged,
  'meter-apply': applyCorrection,
  'meter-verified': meterVerified,
  'meter-screw-turned': screwTurned,
  'chain-weakest-rung': weakestRung,
  'chain-certificate-once': certificateTwice,
  'volts-trace-watts': traceWatts,
  'volts-trace-height': traceHeight,
  'volts-trace-load': traceLoad,
  'volts-trace-percent': tracePercent,
  'chain-better-laboratory': betterLaboratory,
  'chain-what-is-traceable': whatIsTraceable,
  'ratios-behind-two-pads': behindTwoPads,
  'ratios-doublings': doublings,
  'ratios-twice-the-volts': twiceTheVolts,
  'ratios-seventeen': seventeen,
  'line-at-input': lineAtInput,
  'line-heat': lineHeat,
  'line-back': lineBack,
  'line-erp': lineErp,
  'blocks-what-happened': whatHappened,
  'blocks-room-warm': roomWarm,
  'blocks-one-instrument': oneInstrument,
  'blocks-how-long': howLong,
  'made-what-counts': whatCounts,
  'made-charges': chargesOfWatt,
  'made-exact-constants': exactConstants,
  'made-change-of-2019': changeOfWatt,
  'shape-beyond-half': beyondHalf,
  'shape-one-box': oneBox,
  'shape-which-bell': whichBell,
  'shape-likeliest-place': likeliestPlace,
  'worst-near-the-end': worstGuess,
  'worst-four-pads': worstSum,
  'worst-certificate': worstCertificate,
  'worst-two-to-eight': worstEight,
  'angles-perfect-pads': anglesGuess,
  'angles-three-parts': anglesSum,
  'angles-share': anglesShare,
  'angles-of-limits': anglesLimits,
  'stated-lumps': statedLumps,
  'stated-display': statedDisplay,
  'stated-mismatch': statedMismatch,
  'stated-certificate': statedCertificate,
  'heat-how': heatHow,
  'heat-waiting': heatWaiting,
  'heat-worth': heatWorth,
  'heat-keyed': heatKeyed,
  'inline-scale': inLineScale,
  'inline-net': inLineNet,
  'inline-swr': inLineSwr,
  'inline-range': inLineRange,
  'pads-match': padsMatch,
  'pads-worth': padsWorth,
  'pads-overload': padsOverload,
  'pads-order': padsOrder,
  'scope-how-sure': scopeHowSure,
  'scope-full-scale': scopeFullScale,
  'scope-what-helps': scopeWhatHelps,
  'scope-range': scopeRange,
  'detector-which-errs': detectorWhichErrs,
  'detector-add-back': detectorAddBack,
  'detector-harmonic': detectorHarmonic,
  'detector-low': detectorLow,
  'readings-three': threeReadings,
  'readings-four-times': fourTimes,
  'readings-one': oneReading,
  'readings-what-is-cured': whatIsCured,
  'tries-mean-of-watts': meanOfWatts,
  'tries-loss-near-nothing': lossNearNothing,
  'tries-more-trials': moreTrials,
  'tries-slope-of-nothing': slopeOfNothing,
  'back-how-much': backHowMuch,
  'back-return-loss': backReturnLoss,
  'back-hidden': backHidden,
  'back-net': backNet,
  'power-meter': powerMeter,
  'power-tones': powerTones,
  'power-reflected': powerReflected,
  'power-efficiency': powerEfficiency,
  'writing-plus-minus': writingPlusMinus,
  'writing-rounded': writingRounded,
  'writing-few': writingFew,
  'writing-brackets': writingBrackets,
  'joins-needle': joinsNeedle,
  'joins-square': joinsSquare,
  'joins-probe': joinsProbe,
  'joins-which': joinsWhich,
  'shared-two-pads': sharedTwoPads,
  'shared-difference': sharedDifference,
  'shared-mean': sharedMean,
  'shared-resistors': sharedResistors,
  'verdict-of-an-evening': verdictOfEvening,
  'verdict-edge': verdictEdge,
  'verdict-at-limit': verdictAtLimit,
  'verdict-who-pays': verdictWhoPays,
  'borrowed-how-good': borrowedHowGood,
  'borrowed-round': borrowedRound,
  'borrowed-later': borrowedLater,
  'borrowed-beyond': borrowedBeyond,
  'spend-on-what': spendOnWhat,
  'spend-halved': spendHalved,
  'spend-readings': spendReadings,
  'spend-enough': spendEnough,
};

/** Ids of every question. */
export const questionIds = (): readonly string[] => Object.keys(QUESTIONS);

/** The question with an id. @throws RangeError for an id that none has. */
export function questionOf(id: string): Question {
  const make = Object.hasOwn(QUESTIONS, id) ? QUESTIONS[id] : undefined;
  if (make === undefined)
    throw new RangeError(`questionOf: no question has the id, got ${JSON.stringify(id)}`);
  return make();
}

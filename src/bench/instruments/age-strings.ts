/** Words on the age of a calibration. */
export const ageStrings = {
  open: (calibrated: string): string => `Calibrated on ${calibrated}.`,
  stands: ({ calibrated, due }: { calibrated: string; due: string }): string =>
    `Calibrated on ${calibrated}; the interval you set ends on ${due}.`,
  old: ({
    calibrated,
    due,
    months,
    on,
  }: {
    calibrated: string;
    due: string;
    months: number;
    on: string;
  }): string =>
    `Calibrated on ${calibrated}: on ${on} that is older than the ${months === 1 ? 'month' : `${months} months`} you set, which ended on ${due}. Have it calibrated again, or state how far it may have drifted.`,
  years: (years: string): string => `Reckoned for ${years} years since the calibration.`,
  staleYears: ({ now, on }: { now: string; on: string }): string =>
    `Drift is not reckoned for ${on}, ${now} years after the calibration: take the instrument once more.`,
  later: ({ calibrated, on }: { calibrated: string; on: string }): string =>
    `Calibrated on ${calibrated}, which comes after ${on}, the day of use: one of the two days is wrong, or the clock of this device.`,
} as const;

import type { BenchState } from './state.types.ts';

/** Whether the measurement is of the sheet that stands there: no figure may show another sheet's. */
export const isOwn = ({ sheet, measured }: Pick<BenchState, 'sheet' | 'measured'>): boolean =>
  sheet === measured;

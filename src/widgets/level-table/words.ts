import { levelDbm, levelToVolts, ohms } from '#compute';
import { fewestDecimals } from '../../text/place.ts';
import { quantityText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { LevelTableState } from './spec.ts';

/** The level that is spoken of when the table has changed. */
const SPOKEN_DBM = 30;

/** The chosen resistance, as it was given. */
export const resistanceText = (style: Style, { resistance }: LevelTableState): string =>
  quantityText(style, { value: resistance, decimals: fewestDecimals(resistance, 1), unit: 'ohm' });

/** What has changed with the resistance, in one spoken sentence: the volts of one watt. */
export function summarise(state: LevelTableState): string {
  const volts = levelToVolts({ level: levelDbm(SPOKEN_DBM), resistance: ohms(state.resistance) });
  const level = quantityText('spoken', { value: SPOKEN_DBM, decimals: 0, unit: 'dBm' });
  const across = resistanceText('spoken', state);
  return `Across ${across}, ${level} are ${quantityText('spoken', { value: volts, decimals: 2, unit: 'Vrms' })}.`;
}

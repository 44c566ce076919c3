import { clubSheet } from '../../sheet/club.ts';
import type { Sheet } from '../../sheet/sheet.ts';
import { twoPadsSheet } from '../../sheet/two-pads.ts';

/** Names of the prepared chains that a page may show. */
export const PRESETS = ['club', 'two-pads'] as const;
export type Preset = (typeof PRESETS)[number];

const SHEETS: Readonly<Record<Preset, () => Sheet>> = { club: clubSheet, 'two-pads': twoPadsSheet };

/** The sheet of a prepared chain. */
export const presetSheet = (preset: Preset): Sheet => SHEETS[preset]();

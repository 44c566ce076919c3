import { clubSheet } from '../../sheet/club.ts';
import type { Sheet } from '../../sheet/sheet.ts';
import { twoPadsSheet } from '../../sheet/two-pads.ts';

const presets = { club: clubSheet, 'two-pads': twoPadsSheet } as const;

/** Names of the prepared chains that a page may show. */
export type Preset = keyof typeof presets;

/** The sheet of a prepared chain. */
export const presetSheet = (preset: Preset): Sheet => presets[preset]();

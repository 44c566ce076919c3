import { halfSpanFor } from '../../src/figures/reading-band.layout.ts';
import type { BandProps } from '../../src/figures/reading-band.types.ts';
import { withLinkAmount } from '../../src/sheet/amount.ts';
import { clubSheet } from '../../src/sheet/club.ts';
import { chainOf } from '../../src/sheet/evaluated-chain.ts';
import type { Sheet } from '../../src/sheet/sheet.ts';
import { twoPadsSheet } from '../../src/sheet/two-pads.ts';
import { type BandRowOptions, bandRows } from '../../src/widgets/parts/band-rows.ts';
import { reachOf } from '../../src/widgets/reading-band/state.ts';

/** What the figure draws for a sheet, as the widget would ask for it. */
export function bandOf(sheet: Sheet, options: Partial<BandProps> & Partial<BandRowOptions> = {}): BandProps {
  const { frame = 'wide', before, showLimits = true, showCurve = false, handles = true, ...rest } = options;
  const chain = chainOf(sheet);
  const reach = Math.max(reachOf(chain), before ? reachOf(before) : 0);
  return {
    frame,
    rows: bandRows({ chain, before, showLimits, showCurve, handles }),
    centreDbm: chain.result.estimate,
    halfSpanDb: halfSpanFor(reach),
    ...rest,
  };
}

const allZero = (sheet: Sheet): Sheet =>
  sheet.links.reduce((changed, { id }) => withLinkAmount(changed, id, 0), sheet);

/** Every state of the figure that has a name, and a picture kept as markup. */
export const namedStates: Readonly<Record<string, () => BandProps>> = {
  club: () => bandOf(clubSheet()),
  'two pads': () => bandOf(twoPadsSheet()),
  narrow: () => bandOf(clubSheet(), { frame: 'narrow' }),
  stage: () => bandOf(clubSheet(), { frame: 'stage' }),
  'everything zero': () => bandOf(allZero(clubSheet())),
  'one huge rung': () => bandOf(withLinkAmount(clubSheet(), 'meter', 3)),
  'curve on': () => bandOf(clubSheet(), { showCurve: true }),
  ghost: () => bandOf(withLinkAmount(clubSheet(), 'pad', 1), { before: chainOf(clubSheet()) }),
  'specification lines': () => bandOf(clubSheet(), { specification: { lower: 26.5, upper: 27.5 } }),
  'specification lines, narrow': () =>
    bandOf(clubSheet(), { frame: 'narrow', specification: { lower: 26.5, upper: 27.5 } }),
};

import { levelDbm, levelToPower, levelToVolts, ohms } from '#compute';
import { amountOf, withLinkAmount } from '../../sheet/amount.ts';
import type { Chain, Rung } from '../../sheet/chain.ts';
import { clubSheet } from '../../sheet/club.ts';
import { clubPadHeat } from '../../sheet/club-pad.ts';
import { COVERAGE_PROBABILITY } from '../../sheet/coverage.ts';
import { chainOf } from '../../sheet/evaluated-chain.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { decimalsFor } from '../../text/place.ts';
import { powerText, powerWithEndsText } from '../../text/power-text.ts';
import { levelText, percentText, quantityText } from '../../text/quantity-text.ts';

const NOMINAL_DBM = 27;
const LOAD_OHM = 50;

/** Numbers of the lesson on the calibration chain, all from the club's demonstration measurement. */
export function chainValues(): Readonly<Record<string, () => string>> {
  const chain = chainOf(clubSheet());
  const { result } = chain;
  const { lower, upper } = result.propagation.interval;
  const watts = (level: number): number => levelToPower(levelDbm(level));
  const middle = watts(result.estimate);
  return {
    level: () => levelText('shown', { levelDbm: result.estimate, decimals: 1 }),
    nationalBand: () => bandAt(chain, 'national'),
    laboratoryBand: () => bandAt(chain, 'laboratory'),
    laboratoryAdds: () => band(amountAt(chain, 'laboratory')),
    meterBand: () => bandAt(chain, 'meter'),
    socketBand: () => band(result.propagation.expanded),
    worstCase: () => band((result.worstCase.interval.upper - result.worstCase.interval.lower) / 2),
    wholeBand: () => band(wholeHalfWidth(chain)),
    watts: () => powerWithEndsText('shown', { powerW: middle, lowerW: watts(lower), upperW: watts(upper) }),
    wattsUp: () => powerText('shown', { powerW: watts(upper) - middle, digits: 2 }),
    wattsDown: () => powerText('shown', { powerW: middle - watts(lower), digits: 2 }),
    dominant: () => chain.sheet.links.find(({ id }) => id === chain.dominantIds[0])?.label ?? 'Nothing',
    dominantShare: () => percentText('shown', { percent: 100 * largestShare(chain), decimals: 0 }),
    padMeasured: () => band(chainOf(withLinkAmount(chain.sheet, 'pad', 0.1)).result.propagation.expanded),
    nationalPerfect: () =>
      band(chainOf(withLinkAmount(chain.sheet, 'national', 0)).result.propagation.expanded),
    certain: () => unsaid({ said: 0, due: result.propagation.expanded }),
    padForgotten: () =>
      unsaid({
        said: chainOf(withLinkAmount(chain.sheet, 'pad', 0)).result.propagation.expanded,
        due: result.propagation.expanded,
      }),
    perfectAbove: () => {
      const perfect = withLinkAmount(withLinkAmount(chain.sheet, 'national', 0), 'laboratory', 0);
      return `${band(result.propagation.expanded)} would become ${band(chainOf(perfect).result.propagation.expanded)}`;
    },
    nominalVolts: () => volts(NOMINAL_DBM),
    upperVolts: () => volts(chain.sheet.specification.upper ?? NOMINAL_DBM),
    padHeat: () =>
      powerText('shown', {
        powerW: clubPadHeat(),
        digits: 3,
      }),
  };
}

const band = (halfWidth: number): string =>
  plusMinusText('shown', { halfWidth, decimals: decimalsFor(halfWidth), unit: 'dB' });

/** A band that somebody claims beside the one that is due. */
const unsaid = ({ said, due }: { said: number; due: number }): string =>
  `${said > 0 ? band(said) : 'no band at all'} claimed where ${band(due)} is due`;

function rungAt({ rungs }: Chain, id: string): Rung {
  const rung = rungs.find((candidate) => candidate.id === id);
  if (rung === undefined)
    throw new RangeError(`chainValues: a rung must have the id, got ${JSON.stringify(id)}`);
  return rung;
}

const bandAt = (chain: Chain, id: string): string => band(rungAt(chain, id).cumulative.propagation.expanded);

function amountAt(chain: Chain, id: string): number {
  const { link } = rungAt(chain, id);
  return link ? amountOf(link.statement) : 0;
}

const largestShare = ({ result }: Chain): number =>
  Math.max(...result.propagation.budget.map(({ share }) => share));

/** Half of the interval that holds the middle of the whole distribution, as large a share as the strip stands for. */
function wholeHalfWidth({ result }: Chain): number {
  if ('unavailable' in result.whole)
    throw new RangeError(`chainValues: the whole distribution is needed, got ${result.whole.unavailable}`);
  const tail = (1 - COVERAGE_PROBABILITY) / 2;
  return (result.whole.quantile(1 - tail) - result.whole.quantile(tail)) / 2;
}

const volts = (level: number): string =>
  quantityText('shown', {
    value: levelToVolts({ level: levelDbm(level), resistance: ohms(LOAD_OHM) }),
    decimals: 2,
    unit: 'Vrms',
  });

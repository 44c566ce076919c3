import type { Risks, Rule } from '#compute';
import { clubHeld, judgedBy, riskAtEdge, sortedBy } from '../sheet/conformity.ts';
import { plusMinusText } from '../text/deviation-text.ts';
import { intervalText } from '../text/interval-text.ts';
import { levelText, numberText, percentText, quantityText } from '../text/quantity-text.ts';
import type { Question } from './question.ts';

const level = (levelDbm: number): string => levelText('shown', { levelDbm, decimals: 2 });
const percent = (share: number, decimals = 0): string =>
  percentText('shown', { percent: 100 * share, decimals });

/** The club's reading with its expanded uncertainty and upper limit. */
function club() {
  const held = clubHeld();
  const expanded = 2 * held.standardUncertainty;
  const limit = held.specification.upper ?? Number.NaN;
  const chance = judgedBy(held).probabilityOfConformity ?? Number.NaN;
  return {
    held,
    expanded,
    limit,
    chance,
    band: plusMinusText('shown', { halfWidth: expanded, decimals: 2, unit: 'dB' }),
  };
}

/** The guess that opens the lesson: a reading below its limit whose band reaches beyond. */
export function verdictOfEvening(): Question {
  const { held, expanded, limit, chance, band } = club();
  const span = intervalText('shown', {
    lower: held.estimate - expanded,
    upper: held.estimate + expanded,
    decimals: 2,
    unit: 'dBm',
  });
  return {
    id: 'verdict-of-an-evening',
    stem: `The hidden transmitter may give ${level(limit)} at most. With a fresh battery the club measures ${level(held.estimate)} ${band} (k = 2). Does it keep to its limit?`,
    answer: 'c',
    worked: `The level may lie anywhere from ${span}: partly below ${level(limit)}, partly above. Taken for itself the reading leaves a chance of ${percent(chance, 1)} that the limit is kept. Whether that is enough is no matter of physics: a rule says it, and it has to be agreed on first. By the club’s, U kept off the limit, this measurement can’t tell.`,
    options: [
      {
        id: 'a',
        text: 'Yes: the reading is below the limit.',
        reply: `The reading is. The power is another thing: with a chance of ${percent(1 - chance, 1)} it lies beyond.`,
      },
      {
        id: 'b',
        text: 'No: the band reaches beyond the limit.',
        reply: 'That shows that it may, not that it does. For “no” all of the band would have to lie beyond.',
      },
      {
        id: 'c',
        text: 'This measurement can’t tell.',
        reply: 'The third answer. It says something about the measurement, not about the transmitter.',
      },
      {
        id: 'd',
        text: 'Yes, and one can be 95 % sure of it.',
        reply: `About 95 % is the chance that the value lies within the strip. How much of it lies within the limit is another number: ${percent(chance, 1)}.`,
      },
    ],
  };
}

/** The highest reading that a guard band of U accepts. */
export function verdictEdge(): Question {
  const { held, expanded, limit, band } = club();
  const edge = judgedBy(held).acceptance?.upper ?? Number.NaN;
  const u = held.standardUncertainty;
  return {
    id: 'verdict-edge',
    stem: `Upper limit ${level(limit)}, ${band} (k = 2). The rule keeps a guard band of one U off the limit. What is the highest reading that is called inside?`,
    answer: 'b',
    worked: `The acceptance limit lies w = U below the tolerance limit (JCGM 106, 8.3): ${level(limit)} less ${quantityText('shown', { value: expanded, decimals: 2, unit: 'dB' })} is ${level(edge)}.`,
    options: [
      {
        id: 'a',
        text: level(limit),
        reply:
          'That is simple acceptance: no guard band at all. A reading there is right in half of the cases.',
      },
      { id: 'b', text: level(edge), reply: 'All of its band then lies within the limit.' },
      {
        id: 'c',
        text: level(limit - u),
        reply: `That keeps one standard uncertainty off, half of U. On it the risk is still ${percent(riskAtEdge({ ...held, rule: { kind: 'guardBand', multiplier: 0.5 } }) ?? 0)}.`,
      },
      {
        id: 'd',
        text: level(limit + expanded),
        reply:
          'There the guard band stands on the wrong side: it is the lowest reading from which “outside” is certain enough.',
      },
    ],
  };
}

/** The risk at the edge of simple acceptance. */
export function verdictAtLimit(): Question {
  const { held, limit, band } = club();
  const risk = (rule: Rule): string => percent(riskAtEdge({ ...held, rule }) ?? 0, 1);
  return {
    id: 'verdict-at-limit',
    stem: `By simple acceptance a reading of ${level(limit)} ${band} (k = 2) is inside. How large is the chance that the power is beyond the limit all the same?`,
    answer: 'd',
    worked: `The reading is as likely too low as too high, so half of what it may stand for lies beyond: ${risk({ kind: 'simple' })}, whatever U is. A guard band of U brings the largest risk down to ${risk({ kind: 'guardBand', multiplier: 1 })}.`,
    options: [
      {
        id: 'a',
        text: 'None: it is inside.',
        reply: 'Inside is what the rule calls it. The rule did not move the power.',
      },
      {
        id: 'b',
        text: risk({ kind: 'guardBand', multiplier: 1 }),
        reply: 'That is the largest risk with a guard band of U. Here there is none.',
      },
      {
        id: 'c',
        text: percent(0.05, 1),
        reply:
          'The strip holds about 95 % of what the reading may stand for; but the limit lies in its middle, not at its end.',
      },
      { id: 'd', text: risk({ kind: 'simple' }), reply: 'And a smaller U would not change it.' },
    ],
  };
}

/** Who pays for a guard band. */
export function verdictWhoPays(): Question {
  const { held } = club();
  const sorted = (rule: Rule): Risks => {
    const risks = sortedBy({ ...held, rule });
    if (risks === undefined) throw new RangeError('verdictWhoPays: the spread must be known, got none');
    return risks;
  };
  const [simple, guarded] = [sorted({ kind: 'simple' }), sorted(held.rule)];
  const thousand = (share: number): string => numberText('shown', { value: 1000 * share, decimals: 1 });
  const from = (which: 'consumer' | 'producer'): string =>
    `from ${thousand(simple[which])} to ${thousand(guarded[which])}`;
  return {
    id: 'verdict-who-pays',
    stem: 'A thousand transmitters from one kit are measured as above. The rule is changed from simple acceptance to a guard band of U. What becomes of the bad ones that are passed, and of the good ones that are sent back?',
    answer: 'a',
    worked: `Bad ones passed: ${from('consumer')} of a thousand; good ones sent back: ${from('producer')}. A rule only shares the risk out. To lower both, measure better.`,
    options: [
      {
        id: 'a',
        text: 'Fewer bad ones are passed, and more good ones are sent back.',
        reply: 'The consumer’s risk falls, the producer’s rises.',
      },
      {
        id: 'b',
        text: 'Fewer of both: the rule is stricter.',
        reply: `Stricter towards all of them, the good ones as well: ${from('producer')} of those are sent back.`,
      },
      {
        id: 'c',
        text: 'Neither changes: the transmitters are what they were.',
        reply: 'They are. Where the line is drawn among the readings has moved.',
      },
      {
        id: 'd',
        text: 'Bad ones are no longer passed at all.',
        reply: `A few still are: ${thousand(guarded.consumer)} of a thousand. No guard band takes the risk down to nothing.`,
      },
    ],
  };
}

import { amountOf, withLinkAmount } from '../sheet/amount.ts';
import { clubSheet } from '../sheet/club.ts';
import { chainOf } from '../sheet/evaluated-chain.ts';
import type { Link, Sheet } from '../sheet/sheet.ts';
import { plusMinusText } from '../text/deviation-text.ts';
import { decimalsFor } from '../text/place.ts';
import { percentText } from '../text/quantity-text.ts';
import type { Question } from './question.ts';

const band = (halfWidth: number): string =>
  plusMinusText('shown', { halfWidth, decimals: decimalsFor(halfWidth), unit: 'dB' });

const share = (value: number): string =>
  percentText('shown', { percent: 100 * value, decimals: value < 0.01 ? 2 : 0 });

function linkNamed({ links }: Sheet, id: string): Link {
  const link = links.find((candidate) => candidate.id === id);
  if (link === undefined)
    throw new RangeError(`linkNamed: the sheet must have the link, got ${JSON.stringify(id)}`);
  return link;
}

/** The guess that opens the lesson on the chain: which rung decides? */
export function weakestRung(sheet: Sheet = clubSheet()): Question {
  const chain = chainOf(sheet);
  const shareOf = (id: string): string =>
    share(chain.result.propagation.budget.find((row) => row.id === id)?.share ?? 0);
  return {
    id: 'chain-weakest-rung',
    stem: 'Between the definition of the watt and the transmitter’s socket, which part makes this reading least sure?',
    answer: 'd',
    worked: `It brings ${shareOf('pad')} of the variance. The lent meter brings ${shareOf('meter')}, the laboratory’s comparison ${shareOf('laboratory')} and the national standard ${shareOf('national')}.`,
    options: [
      {
        id: 'a',
        text: 'The national standard: an error there is in everything below.',
        reply: `An error there is in everything below, but it is small: ${shareOf('national')} of the variance.`,
      },
      {
        id: 'b',
        text: 'The laboratory that calibrated the meter.',
        reply: `Its comparison brings ${shareOf('laboratory')}: laboratories are careful, and it shows.`,
      },
      {
        id: 'c',
        text: 'The lent power meter.',
        reply: `It brings ${shareOf('meter')} of the variance.`,
      },
      {
        id: 'd',
        text: 'The 20 dB pad, by its data sheet.',
        reply: 'A passive part with no display is easily overlooked.',
      },
    ],
  };
}

/** The check that closes it: an uncertainty on a certificate already holds everything above it. */
export function certificateTwice(sheet: Sheet = clubSheet()): Question {
  const own = {
    ...sheet,
    links: sheet.links.filter(({ id }) => !['national', 'laboratory', 'meter'].includes(id)),
  };
  const certificate = { form: 'expanded', expanded: 0.3, coverageFactor: 2 } as const;
  const meter = linkNamed(sheet, 'meter');
  const once = { ...own, links: [{ ...meter, statement: certificate }, ...own.links] };
  const expanded = (candidate: typeof sheet): number => chainOf(candidate).result.propagation.expanded;
  const right = expanded(once);
  const stated = (id: string): number => amountOf(linkNamed(sheet, id).statement);
  const added = right + stated('laboratory') + stated('national');
  const halfPad = expanded(withLinkAmount(once, 'pad', stated('pad') / 2));
  return {
    id: 'chain-certificate-once',
    stem: `The lent meter comes back with a certificate: U = ${band(0.3).slice(1)}, k = 2, traceable to the national standard. Mismatch, pad and coax stay as they are. Which expanded uncertainty (k = 2) belongs to the reading at the socket?`,
    answer: 'b',
    worked: `The certificate’s U replaces the meter’s own limits and everything above the meter. Halved it is a standard uncertainty; squared and added to those of mismatch, pad and coax, its root times 2 is ${band(right)}.`,
    options: [
      {
        id: 'a',
        text: band(added),
        reply:
          'That adds the laboratory and the national standard once more, and as plain sums. They are inside the certificate’s U already.',
      },
      {
        id: 'b',
        text: band(right),
        reply: 'One certificate, counted once; the rest combined at right angles.',
      },
      {
        id: 'c',
        text: band(0.3),
        reply: 'That is the meter alone. The pad and the mismatch stand between it and the transmitter.',
      },
      {
        id: 'd',
        text: band(halfPad),
        reply: 'That would take a pad twice as good. A certificate for the meter does nothing for the pad.',
      },
    ],
  };
}

/** What a better laboratory would be worth: hardly anything, where another rung outweighs it. */
export function betterLaboratory(sheet: Sheet = clubSheet()): Question {
  const expanded = (candidate: Sheet): number => chainOf(candidate).result.propagation.expanded;
  const stated = amountOf(linkNamed(sheet, 'laboratory').statement);
  const now = expanded(sheet);
  const right = expanded(withLinkAmount(sheet, 'laboratory', stated / 10));
  const without = expanded({ ...sheet, links: sheet.links.filter(({ id }) => id !== 'meter') });
  return {
    id: 'chain-better-laboratory',
    stem: `The laboratory’s comparison becomes ten times better: ${band(stated / 10)} instead of ${band(stated)} (k = 2). The meter keeps its own limits. What becomes of ${band(now)} at the socket?`,
    answer: 'c',
    worked: `Standard uncertainties combine by their squares, and the laboratory brings ${share(laboratoryShare(sheet))} of the variance. A tenth of the uncertainty is a hundredth of that share: ${band(now)} stays ${band(right)} to every digit that counts.`,
    options: [
      {
        id: 'a',
        text: `${band(now / 10)}: ten times better at the top is ten times better below.`,
        reply: 'Every rung adds its own doubt. A better top takes away only what the top had brought.',
      },
      {
        id: 'b',
        text: `${band(without)}: the meter is as good as its laboratory.`,
        reply:
          'That is the chain without the meter’s limits. A better laboratory does not make the meter keep to less.',
      },
      {
        id: 'c',
        text: `${band(right)}: nothing that anyone could see.`,
        reply: 'The largest part decides, and the laboratory’s is not the largest.',
      },
      {
        id: 'd',
        text: `${band(now - (stated - stated / 10))}: the gain comes straight off.`,
        reply:
          'That subtracts the gain as a plain number. Parts that do not depend on each other combine like sides at a right angle.',
      },
    ],
  };
}

const laboratoryShare = (sheet: Sheet): number =>
  chainOf(sheet).result.propagation.budget.find(({ id }) => id === 'laboratory')?.share ?? 0;

/** What makes a result traceable. */
export const whatIsTraceable = (): Question => ({
  id: 'chain-what-is-traceable',
  stem: 'The club wants to write “traceable to the national standard” beside its result. What must be there?',
  answer: 'c',
  worked:
    'Metrological traceability (VIM 2012, 2.41) belongs to a result: every comparison from the reference down to this reading is written down, each with its uncertainty, and the result carries what they add up to.',
  options: [
    {
      id: 'a',
      text: 'A sticker on the meter that is not out of date.',
      reply:
        'A sticker says that something was once compared. It gives neither the numbers nor the rest of the chain: pad, coax, mismatch.',
    },
    {
      id: 'b',
      text: 'A meter of the same type as the one that the national institute uses.',
      reply: 'Likeness is no comparison. Two of a kind may differ by all that their data sheet allows.',
    },
    {
      id: 'c',
      text: 'A written chain of comparisons without a gap, each with its uncertainty, down to this very reading.',
      reply: 'And if one link is missing, the result is as good as that gap.',
    },
    {
      id: 'd',
      text: 'A meter that was adjusted until it agreed with a better one.',
      reply:
        'Agreement once, at one level and without an uncertainty, is not a chain; and after the adjustment it has to be compared anew.',
    },
  ],
});

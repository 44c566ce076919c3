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

import { mean } from '#compute';
import { chainOf } from '../sheet/evaluated-chain.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { changeText, levelText } from '../text/quantity-text.ts';
import { statementText } from '../text/statement-text.ts';

/** A line of the sum: what, by how much, and what it may be wrong by. */
export interface SumLine {
  readonly what: string;
  readonly value: string;
  readonly stated: string;
}

/** The sum from the reading to the socket, a line each, with units: losses are added back. */
export function sumLines(sheet: Sheet): readonly SumLine[] {
  const reading = {
    what: 'Reading',
    value: levelText('shown', { levelDbm: mean(sheet.readings), decimals: 1 }),
    stated: '',
  };
  const links = sheet.links.map(({ label, lossDb, statement, unit }) => ({
    what: label,
    value: lossDb === 0 ? '' : changeText('shown', { value: lossDb, decimals: 1, unit: 'dB' }),
    stated: statementText('shown', { statement, unit }),
  }));
  const { estimate } = chainOf(sheet).result;
  return [
    reading,
    ...links,
    {
      what: 'At the transmitter’s socket',
      value: levelText('shown', { levelDbm: estimate, decimals: 1 }),
      stated: '',
    },
  ];
}

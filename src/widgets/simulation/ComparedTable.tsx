import type { Interval } from '#compute';
import { levelText } from '../../text/quantity-text.ts';
import { strings } from './strings.ts';

/** One way to the interval, in dBm. */
export interface ComparedWay {
  readonly name: string;
  readonly interval: Interval;
}

const level = (levelDbm: number): string => levelText('shown', { levelDbm, decimals: 3 });

/** The same interval by several ways, one below the other. */
export function ComparedTable({ ways }: { ways: readonly ComparedWay[] }) {
  return (
    <table>
      <caption>{strings.caption}</caption>
      <thead>
        <tr>
          <th scope="col">{strings.way}</th>
          <th scope="col" class="number">
            {strings.lower}
          </th>
          <th scope="col" class="number">
            {strings.upper}
          </th>
        </tr>
      </thead>
      <tbody>
        {ways.map(({ name, interval: { lower, upper } }) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td class="number">{level(lower)}</td>
            <td class="number">{level(upper)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

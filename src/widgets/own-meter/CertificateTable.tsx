import { certificate } from '../../sheet/own-meter.ts';
import { changeText, dbText, levelText } from '../../text/quantity-text.ts';
import { strings } from './strings.ts';

/** The table of the certificate. */
export function CertificateTable() {
  const { caption, shows, correction, expanded } = strings.table;
  return (
    <section class="scroll" aria-label={caption} tabIndex={0}>
      <table class="certificate">
        <caption>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">{shows}</th>
            <th scope="col" class="number">
              {correction}
            </th>
            <th scope="col" class="number">
              {expanded}
            </th>
          </tr>
        </thead>
        <tbody>
          {certificate().map((line) => (
            <tr key={line.at}>
              <th scope="row">{levelText('shown', { levelDbm: line.at, decimals: 0 })}</th>
              <td class="number">
                {changeText('shown', { value: line.correction, decimals: 2, unit: 'dB' })}
              </td>
              <td class="number">{dbText('shown', { db: line.expanded, decimals: 2 })}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

import { useMemo } from 'preact/hooks';
import type { Specification } from '#compute';
import type { NumberSpec } from '../address/field-spec.ts';
import { judgedBy } from '../sheet/conformity.ts';
import { levelText, numberText, quantityText } from '../text/quantity-text.ts';
import { Announcer } from '../widgets/parts/Announcer.tsx';
import { StageStates } from './StageStates.tsx';
import { StageWhatIf } from './StageWhatIf.tsx';
import { strings } from './strings.ts';
import { useStageFields } from './use-stage-fields.ts';

/** Readings that are held against one specification, all with one expanded uncertainty. */
export interface StageBoardsProps {
  readonly readings: readonly number[];
  readonly specification: Specification;
  /** U of each, for k = 2. */
  readonly expanded: number;
}

/** One press, in dB. */
const PRESS = 0.1;
const expandedField = (expanded: number): NumberSpec => ({
  type: 'number',
  key: 'u',
  label: strings.boards.expanded,
  kind: 'halfWidthDb',
  min: 0.05,
  max: 2,
  step: 0.05,
  decimals: 2,
  default: expanded,
});

const count = (value: number): string => numberText('shown', { value, decimals: 0 });

/** Several boards with their verdicts on the wall, their U to be changed in one press. */
export default function StageBoards({ readings, specification, expanded }: StageBoardsProps) {
  const fields = useMemo(() => ({ expanded: expandedField(expanded) }), [expanded]);
  const [{ values }, send] = useStageFields(fields);
  const rows = readings.map((estimate, index) => {
    const { verdict } = judgedBy({
      estimate,
      standardUncertainty: values.expanded / 2,
      specification,
      rule: { kind: 'guardBand', multiplier: 1 },
    });
    const reading = levelText('shown', { levelDbm: estimate, decimals: 2 });
    return {
      name: strings.boards.board(count(index + 1)),
      reading,
      verdict,
      text: strings.boards.verdict[verdict],
    };
  });
  const open = rows.filter(({ verdict }) => verdict === 'cant-tell').length;
  const answer = strings.boards.open(count(open), count(rows.length));
  const said = strings.boards.said(
    quantityText('spoken', { value: values.expanded, decimals: fields.expanded.decimals, unit: 'dB' }),
    rows.map(({ name, text }) => `${name} ${text}`),
  );
  return (
    <div class="stage-band">
      <table class="parts-table">
        <tbody>
          {rows.map(({ name, reading, text }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td class="number">{reading}</td>
              <td>{text}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <StageWhatIf
        field={fields.expanded}
        unit="dB"
        value={values.expanded}
        press={PRESS}
        onValue={(value) => send({ type: 'set', name: 'expanded', value })}
        onReset={() => send({ type: 'reset', values: { expanded } })}
      />
      <StageStates answer={answer} rows={rows.map(({ name, text }) => ({ name, text }))} />
      <Announcer summary={said} />
    </div>
  );
}

import { useEffect } from 'preact/hooks';
import { TextField } from '../../widgets/parts/TextField.tsx';
import { controlId } from '../form/keys.ts';
import { LONGEST_NOTE, LONGEST_TEXT } from '../read/spec.ts';
import { anyCheck, checkQuestion } from '../validity/check-question.ts';
import { recordStrings as strings } from '../words/record-strings.ts';
import {
  agreementLines,
  calibrationLines,
  noteLines,
  RECORD_KEYS,
  type RecordLine,
} from '../words/record-words.ts';
import { editText } from './context.ts';
import { useFetched } from './use-fetched.ts';
import type { DefenceProps } from './ValidityPart.tsx';

/** Fields that take several lines. */
const LONG: readonly string[] = ['instruments', 'certificates', 'remarks'];

interface RecordProps extends DefenceProps {
  /** Whether the result is of this sheet: only then do its checks say anything. */
  readonly own: boolean;
}

/** What a record has beside the numbers: notes to be typed, the log of what was agreed, on paper the checks too. */
export function RecordPart(props: RecordProps) {
  const { entries, send } = props;
  const notes = noteLines(entries);
  const calibrated = calibrationLines(entries);
  return (
    <section class="record-part" aria-labelledby="record">
      <h2 id="record">{strings.heading}</h2>
      <div class="needs-script">
        <p class="measure">{strings.intro}</p>
        <div class="fields">
          {RECORD_KEYS.map((key) => (
            <TextField
              key={key}
              id={controlId(key)}
              label={strings.labels[key]}
              value={entries[key]}
              help={strings.help[key]}
              maxLength={LONG.includes(key) ? LONGEST_NOTE : LONGEST_TEXT}
              {...(LONG.includes(key) && { rows: 3 })}
              onText={(text) => send(editText(key, text))}
            />
          ))}
        </div>
      </div>
      {calibrated.length > 0 && (
        <div class="on-paper">
          <Lines lines={calibrated} />
        </div>
      )}
      <div class="on-paper">
        {notes.length === 0 ? <p>{strings.nothing}</p> : <Lines lines={notes} typed />}
      </div>
      <h3>{strings.logHeading}</h3>
      <Lines lines={agreementLines('shown', entries)} />
      <div class="on-paper">
        <h3>{strings.checksHeading}</h3>
        <ChecksOnPaper {...props} />
      </div>
    </section>
  );
}

const load = () => import('../validity/check-words.ts');

/** Paper has no button to ask again by: what could not be fetched is tried again after so long, in ms. */
const AGAIN_MS = 20_000;

function ChecksOnPaper({ entries, measurement, shown, own }: RecordProps) {
  const any = anyCheck(entries);
  const { module, failed, again } = useFetched(load, any);
  useEffect(() => {
    const timer = failed ? setTimeout(again, AGAIN_MS) : undefined;
    return () => clearTimeout(timer);
  }, [failed]);
  if (!any) return <p>{strings.noChecks}</p>;
  if (!own) return <p>{strings.checks.notOwn}</p>;
  if (module === undefined) return <p>{strings.checks[failed ? 'failed' : 'waiting']}</p>;
  const lines = module.checkLines('shown', checkQuestion(entries, measurement, shown));
  const left = lines.filter(({ status }) => status === 'notMade').map(({ name }) => name);
  return (
    <Lines
      lines={[
        ...lines
          .filter(({ status }) => status !== 'notMade')
          .map(({ check, name, statusText, says }) => ({
            key: check,
            label: name,
            text: `${statusText}: ${says}`,
          })),
        ...(left.length === 0 ? [] : [{ key: 'left', label: strings.notMade, text: left.join('; ') }]),
      ]}
    />
  );
}

/** What is noted as a number with its unit has the decimal sign of every other. */
const QUANTITIES: readonly string[] = ['supply', 'temperature'];

interface LinesProps {
  readonly lines: readonly RecordLine[];
  /** Whether their texts are a reader's own words. */
  readonly typed?: boolean;
}

const Lines = ({ lines, typed = false }: LinesProps) => (
  <dl class="record-lines">
    {lines.map(({ key, label, text }) => (
      <div key={key}>
        <dt>{label}</dt>
        <dd dir="auto">{typed && !QUANTITIES.includes(key) ? <bdi>{text}</bdi> : text}</dd>
      </div>
    ))}
  </dl>
);

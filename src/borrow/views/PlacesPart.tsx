import { controlId, linkPath } from '../../bench/form/keys.ts';
import { problemAt } from '../../bench/views/context.ts';
import { TextField } from '../../widgets/parts/TextField.tsx';
import { MOST_PLACES, type PlaceEntries } from '../entries.ts';
import { readTable } from '../read-table.ts';
import { readingStrings } from '../reading-strings.ts';
import { strings } from '../strings.ts';
import type { PartProps } from './context.ts';

/** Lines of a field of readings. */
const ROWS = 6;

interface PlaceProps extends PartProps {
  readonly place: PlaceEntries;
  readonly number: number;
}

/** Levels or frequencies with their readings in turn. */
export function PlacesPart(props: PartProps) {
  const { entries, send } = props;
  const { along, places } = entries;
  return (
    <fieldset class="bench-part">
      <legend>{strings.sections.readings}</legend>
      <p class="field-help measure">{strings.readingsHelp}</p>
      <ol class="places">
        {places.map((place, index) => (
          <Place key={place.id} {...props} place={place} number={index + 1} />
        ))}
      </ol>
      <p class="point-actions">
        <button
          type="button"
          class="plain"
          disabled={places.length >= MOST_PLACES}
          onClick={() => send({ type: 'addPlace' })}
        >
          {strings.addPlace[along]}
        </button>
      </p>
    </fieldset>
  );
}

function Place(props: PlaceProps) {
  const { place, number, entries, problems, send } = props;
  const [at, readings] = [linkPath(place.id, 'at'), linkPath(place.id, 'readings')];
  const { along } = entries;
  return (
    <li>
      <fieldset class="link">
        <legend>{strings.place(number)}</legend>
        <div class="link-body place-fields">
          <TextField
            id={controlId(at)}
            label={strings.at[along]}
            value={place.at}
            help={strings.atHelp[along]}
            problem={problemAt(problems, at)}
            onText={(text) => send({ type: 'editPlace', id: place.id, path: at, change: { at: text } })}
          />
          <TextField
            id={controlId(readings)}
            label={strings.sections.readings}
            value={place.readings}
            rows={ROWS}
            problem={problemAt(problems, readings)}
            onText={(text) =>
              send({ type: 'editPlace', id: place.id, path: readings, change: { readings: text } })
            }
          />
          <Actions {...props} faulty={problemAt(problems, readings) !== undefined} />
        </div>
      </fieldset>
    </li>
  );
}

/** Spreads a whole table that was pasted here; takes the place away where there are others. */
function Actions({ place, number, entries, send, faulty }: PlaceProps & { readonly faulty: boolean }) {
  const table = faulty ? readTable(place.readings) : undefined;
  return (
    <p class="point-actions">
      {table && (
        <>
          <span>{readingStrings.table(table.length)}</span>{' '}
          <button type="button" class="plain" onClick={() => send({ type: 'spread', id: place.id })}>
            {strings.spread(table.length)}
          </button>
        </>
      )}
      {entries.places.length > 1 && (
        <button type="button" class="plain" onClick={() => send({ type: 'removePlace', id: place.id })}>
          {strings.removePlace(number)}
        </button>
      )}
    </p>
  );
}

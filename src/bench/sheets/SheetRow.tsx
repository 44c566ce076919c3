import type { SheetEntries } from '../../sheet/entries.ts';
import type { Kept } from '../../store/kept.ts';
import { isolated } from '../../text/isolate.ts';
import { timeText } from '../../text/time-text.ts';
import { setupStrings } from '../form/setup-strings.ts';
import { isFuture } from '../keep/future.ts';
import { KEPT_PLACE } from '../keep/mark.ts';
import { sheetStrings as strings } from './strings.ts';

interface SheetRowProps {
  readonly sheet: Kept<SheetEntries>;
  /** Milliseconds since 1970, by this device's clock. */
  readonly now: number;
  readonly onDuplicate: () => void;
  readonly onRemove: () => void;
}

/** One kept sheet: what it is, when it was changed, and what can be done with it. */
export function SheetRow({ sheet, now, onDuplicate, onRemove }: SheetRowProps) {
  const { id, changed, value } = sheet;
  const name = isolated(sheet.name);
  return (
    <li class="sheet-row">
      <div>
        <a class="sheet-name" href={`../#${KEPT_PLACE}${id}`} dir="auto">
          {name}
        </a>
        <p class="muted small">
          {strings.about(setupStrings.methods[value.method].name, value.points.length)},{' '}
          {strings.changed(timeText(changed))}
        </p>
        {isFuture(changed, now) && <p class="small">{strings.future}</p>}
      </div>
      <p class="sheet-actions">
        <button type="button" aria-label={strings.onlyButton(strings.duplicate, name)} onClick={onDuplicate}>
          {strings.duplicate}
        </button>
        <button type="button" aria-label={strings.onlyButton(strings.remove, name)} onClick={onRemove}>
          {strings.remove}
        </button>
      </p>
    </li>
  );
}

import type { SheetEntries } from '../../sheet/entries.ts';
import type { Measurement, RecordNotes } from '../../sheet/measurement.ts';
import type { LinkKind } from '../../sheet/sheet.ts';
import { namelessStrings as strings } from './nameless-strings.ts';

/** Notes of a record that name people and things; supply, temperature and the day name nobody. */
const NO_NAMES = {
  by: '',
  instruments: '',
  certificates: '',
  remarks: '',
} as const satisfies Partial<RecordNotes>;

interface NamedLink {
  readonly kind: LinkKind;
  readonly label: string;
  readonly cause?: string;
}

/** Links called by their kinds, numbered where there are several of one; causes numbered, so that who shares one still shows. */
function namelessLinks<Of extends NamedLink>(links: readonly Of[]): readonly Of[] {
  const causes = [...new Set(links.map(({ cause }) => cause?.trim() ?? ''))].filter((cause) => cause !== '');
  return links.map((link, index) => {
    const same = links.filter(({ kind }) => kind === link.kind).length;
    const before = links.slice(0, index).filter(({ kind }) => kind === link.kind).length;
    const name = strings.kinds[link.kind];
    const cause = link.cause?.trim() ?? '';
    return {
      ...link,
      label: same === 1 ? name : strings.numbered(name, before + 1),
      ...(cause !== '' && { cause: strings.cause(causes.indexOf(cause) + 1) }),
    };
  });
}

/** A sheet without names and serial numbers; every number in it stays, and so does what came with frequency, plane and conditions. */
export const namelessEntries = (entries: SheetEntries): SheetEntries => ({
  ...entries,
  ...NO_NAMES,
  title: strings.title,
  links: namelessLinks(entries.links).map((link) => ({ ...link, instrument: '' })),
  points: entries.points.map((point) => ({ ...point, label: '' })),
  log: {
    ...entries.log,
    changes: entries.log.changes.map((change) => ({
      ...change,
      reason: change.reason.trim() === '' ? '' : strings.reason,
    })),
  },
});

/** The same for a measurement. */
export const namelessMeasurement = (measurement: Measurement): Measurement => ({
  ...measurement,
  title: strings.title,
  links: namelessLinks(measurement.links),
  points: measurement.points.map((point) => ({ ...point, label: '', unnamed: true as const })),
  record: { ...measurement.record, ...NO_NAMES },
});

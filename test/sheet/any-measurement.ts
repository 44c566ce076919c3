import { clubMeasurement } from '../../src/sheet/club-measurement.ts';
import { linkOf } from '../../src/sheet/link.ts';
import type { Measurement, Point, StatedLink } from '../../src/sheet/measurement.ts';
import type { Columns, MethodKind, MethodSetup } from '../../src/sheet/method.ts';

/** Limits of plus-minus `halfWidth`, nothing else known. */
export const within = (halfWidth: number) => ({ form: 'limits', shape: 'rectangular', halfWidth }) as const;

/** A link with little to say of itself. */
export const stated = (link: Partial<StatedLink> & Pick<StatedLink, 'id' | 'stated'>): StatedLink => {
  const { statement: _, ...plain } = linkOf({
    id: link.id,
    label: link.id,
    kind: 'other',
    statement: within(0),
    source: 'judged',
  });
  return { ...plain, ...link };
};

const none: Columns = { readings: [], reflected: [], riseDc: [], volts: [], amperes: [] };

/** The club's measurement by a method with its setup, columns, point and links exchanged. */
export function measurementBy(
  method: MethodKind,
  {
    setup = {},
    columns,
    point = {},
    links = [],
    ...more
  }: Partial<Omit<Measurement, 'setup' | 'points' | 'links'>> & {
    readonly setup?: Partial<MethodSetup>;
    readonly columns?: Partial<Columns>;
    readonly point?: Partial<Point>;
    readonly links?: readonly StatedLink[];
  } = {},
): Measurement {
  const club = clubMeasurement(method);
  const { repeatability: _, ...rest } = club;
  return {
    ...rest,
    ...more,
    // the parts of one method's setup stay together; a spread of a union forgets it
    setup: { ...club.setup, ...setup } as MethodSetup,
    points: club.points.map((own) => ({
      ...own,
      ...point,
      columns: columns ? { ...none, ...columns } : own.columns,
    })),
    links,
  };
}

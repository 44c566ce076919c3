import { encode } from '../../address/encode.ts';
import type { AddressSpec } from '../../address/field-spec.ts';
import { defaultState } from '../../address/field-spec.ts';
import type { Example } from '../../examples/example.ts';
import { boardSheet, fourReadingsOneLimit } from '../../examples/four-readings-one-limit.ts';
import { starts } from '../../examples/starts.ts';
import type { Sheet } from '../../sheet/sheet.ts';
import { keyedSpec } from '../../widgets/envelope/spec.ts';
import { stairsSpec } from '../../widgets/level-diagram/spec.ts';
import { rowSpec } from '../../widgets/pads-in-a-row/spec.ts';
import type { PlainFields } from '../../widgets/parts/fields.ts';
import { type Start, startingAt } from '../../widgets/parts/starting.ts';
import { scopeSpec } from '../../widgets/scope/spec.ts';
import { backSpec } from '../../widgets/what-comes-back/spec.ts';

/** The chain that an example's figure is of, and which a frame of its own shows; none where the figure is that of a lesson. */
export function figureSheet(example: Example): Sheet | undefined {
  if (example.kind === 'chain') return example.sheet();
  return example.slug === fourReadingsOneLimit.slug ? boardSheet() : undefined;
}

/** A lesson's figure in a frame, with these numbers in its address. */
const framed = <Of extends PlainFields>(widget: string, spec: AddressSpec<Of>, start: Start): string =>
  `/embed/${widget}/?${encode(spec, defaultState(startingAt(spec, start).fields))}`;

const OF_LESSONS: Readonly<Record<keyof typeof starts, () => string>> = {
  'load-forgotten': () => framed('oscilloscope', scopeSpec, starts['load-forgotten']()),
  'beyond-the-bandwidth': () => framed('oscilloscope', scopeSpec, starts['beyond-the-bandwidth']()),
  'pad-measured-at-dc': () =>
    framed('pads-in-a-row-straight', rowSpec('straight'), starts['pad-measured-at-dc']()),
  'swr-of-a-whip': () => framed('what-comes-back', backSpec, starts['swr-of-a-whip']()),
  'keyed-and-spoken': () => framed('envelope', keyedSpec, starts['keyed-and-spoken']()),
  'thirty-decibels-forgotten': () =>
    framed('level-diagram', stairsSpec, starts['thirty-decibels-forgotten']()),
};

/** Where an example's figure stands alone, for a frame on other people's pages, with the example's numbers. @throws RangeError where it stands nowhere. */
export function frameAddress(example: Example): string {
  const { slug } = example;
  if (figureSheet(example)) return `/embed/${slug}/`;
  if (!Object.hasOwn(OF_LESSONS, slug))
    throw new RangeError(`frameAddress: an example must have a figure, got ${slug}`);
  return OF_LESSONS[slug as keyof typeof starts]();
}

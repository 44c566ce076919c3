import type { FileForm } from '../../src/exchange/file-form.ts';
import { spec } from '../address/demonstration.ts';

/** Files of things with a field of every type. */
export const form = { version: 2, lists: { things: spec.fields } } as const satisfies FileForm;

export const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

/** A file that says of itself what ours do, with this in it. */
export const fileOf = (content: object, version: unknown = 2): Uint8Array =>
  bytesOf(JSON.stringify({ file: 'how-sure-is-a-watt', version, ...content }));

import { describe, expect, test } from 'vitest';
import { readChosen } from '../../src/exchange/chosen-file.ts';
import { LARGEST_FILE } from '../../src/exchange/file-form.ts';

describe('a file that somebody chose', () => {
  test('is read byte by byte', async () => {
    const bytes = new Uint8Array([0x7b, 0x7d, 0, 255]);
    expect(await readChosen(new File([bytes], 'a.json'))).toEqual({ ok: true, bytes });
  });

  test('is not even looked at if it is too large', async () => {
    let looked = false;
    const arrayBuffer = () => {
      looked = true;
      return Promise.resolve(new ArrayBuffer(0));
    };
    const read = await readChosen({ size: LARGEST_FILE + 1, arrayBuffer });
    expect(read.ok ? '' : read.problem).toMatch(/files of up to 5\.0\u00a0MB are opened here/);
    expect(looked).toBe(false);
  });

  test('is told where the browser cannot read it', async () => {
    const gone = { size: 7, arrayBuffer: () => Promise.reject(new Error('gone')) };
    expect(await readChosen(gone)).toEqual({ ok: false, problem: 'The browser could not read this file.' });
  });
});

import { describe, expect, it } from 'vitest';
import { anythingKept } from '../../../src/bench/keep/anything-kept.ts';
import { DATABASE } from '../../../src/store/database.ts';

const nothing = { hash: '', state: null, databases: () => Promise.resolve([]) };

describe('whether there may be a kept sheet to open', () => {
  it('is no where nothing was ever kept and nothing is asked for', async () => {
    expect(await anythingKept(nothing)).toBe(false);
    expect(await anythingKept({ ...nothing, databases: async () => [{ name: 'another' }, {}] })).toBe(false);
  });

  it('is yes where this site has kept something', async () => {
    expect(await anythingKept({ ...nothing, databases: async () => [{ name: DATABASE }] })).toBe(true);
  });

  it('is yes where the address or the history names a sheet', async () => {
    expect(await anythingKept({ ...nothing, hash: '#kept-abc' })).toBe(true);
    expect(await anythingKept({ ...nothing, state: { kept: 'abc' } })).toBe(true);
  });

  it('is yes where the browser does not tell, or refuses to', async () => {
    expect(await anythingKept({ ...nothing, databases: () => undefined })).toBe(true);
    const refused = () => Promise.reject(new DOMException('refused', 'SecurityError'));
    expect(await anythingKept({ ...nothing, databases: refused })).toBe(true);
    const throws = (): never => {
      throw new DOMException('refused', 'SecurityError');
    };
    expect(await anythingKept({ ...nothing, databases: throws })).toBe(true);
  });
});

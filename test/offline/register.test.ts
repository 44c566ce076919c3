import { afterEach, expect, it, vi } from 'vitest';
import { comesBack, stubWindow } from '../hooks/window.ts';
import { storage } from '../store/any-storage.ts';

afterEach(() => vi.unstubAllGlobals());

class FakeScript {
  readonly src = 'https://club.example/offline-register.js';
}

it('a page that comes back as it was left has those who follow what is kept look again', async () => {
  const events = stubWindow();
  vi.stubGlobal('HTMLScriptElement', FakeScript);
  Object.assign(document, { currentScript: new FakeScript() });
  vi.stubGlobal('localStorage', storage());
  await import('../../src/offline/register.ts');
  const heard = vi.fn();
  events.addEventListener('storage', heard);
  events.dispatchEvent(Object.assign(new Event('pageshow'), { persisted: false }));
  expect(heard).not.toHaveBeenCalled();
  comesBack(events);
  expect(heard).toHaveBeenCalledOnce();
});

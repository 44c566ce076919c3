import type { ClientDirective } from 'astro';
import { painted, wake } from './wake.ts';

/** Whether the address carries a state: a query, or a fragment with a value in it (one without is a place on the page). */
const carriesState = ({ search, hash }: Location): boolean => search.length > 1 || hash.includes('=');

/**
 * `client:needed`: an island wakes when it is first seen and the page has been drawn; at once where the address carries a state, so that
 * what prints or is read aloud is what was linked, wherever on the page it stands.
 */
const needed: ClientDirective = (load, _options, island) => {
  if (carriesState(location)) {
    void wake(load);
    return;
  }
  const seen = new IntersectionObserver((entries) => {
    if (!entries.some(({ isIntersecting }) => isIntersecting)) return;
    seen.disconnect();
    void painted().then(() => wake(load));
  });
  for (const child of island.children) seen.observe(child);
};

export default needed;

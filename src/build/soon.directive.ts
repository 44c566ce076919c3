import type { ClientDirective } from 'astro';
import { painted } from './painted.ts';

/** `client:soon`: an island wakes as soon as the page has been drawn, wherever on it or hidden it stands. */
const soon: ClientDirective = async (load) => {
  await painted();
  const hydrate = await load();
  await hydrate();
};

export default soon;

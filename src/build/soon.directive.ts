import type { ClientDirective } from 'astro';
import { painted, wake } from './wake.ts';

/** `client:soon`: an island wakes as soon as the page has been drawn, wherever on it or hidden it stands. */
const soon: ClientDirective = async (load) => {
  await painted();
  await wake(load);
};

export default soon;

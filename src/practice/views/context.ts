import { createContext } from 'preact';
import type { Around } from '../facts.ts';

/** What every part of a page of practice knows from the build. */
export const AroundContext = createContext<Around>({ root: '/', lessons: {}, questions: [], topics: [] });

// Writes the linter's restricted imports from the table of arrows: `npm run arrows`.
import { writeFileSync } from 'node:fs';
import { arrowsText } from './arrows-config.ts';

writeFileSync(new URL('arrows.json', import.meta.url), arrowsText());

import type { Sheet } from '../../sheet/sheet.ts';
import { saidText } from '../../text/said-text.ts';

/** The sheet with each label that has symbols of units or signs in words as well; made with the page, so that no script has to. */
export const withSaidLabels = (sheet: Sheet): Sheet => ({
  ...sheet,
  links: sheet.links.map((link) => {
    const said = saidText(link.label);
    return said === link.label ? link : { ...link, said };
  }),
});

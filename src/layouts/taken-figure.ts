import { type FigureWish, figureOfAddress } from '../bench/export/figure-of-address.ts';
import { fileName } from '../exchange/file-name.ts';
import type { Picture } from '../exchange/picture.ts';
import { pngOf } from '../exchange/png.ts';
import { saveFile } from '../exchange/save-file.ts';
import { keptDecimal } from '../store/decimal.ts';
import { figureStrings as strings } from './figure-strings.ts';
import { shownFigure } from './shown-figure.ts';

/** What a page wrote down of the sheet, as the attributes of an element hold it. */
type Written = Readonly<Record<string, string | undefined>>;

const wishOf = ({
  fragment = '',
  links = '',
  assumptions = '',
  version = '',
  ...of
}: Written): FigureWish => ({
  fragment,
  linkIds: links.split(' '),
  query: location.search,
  assumptions: assumptions.split('\n'),
  address: addressOf(of),
  version,
  decimal: keptDecimal(),
});

/** Address of the page with what was changed in it. */
const addressOf = ({ address = '' }: Written): string => `${address}${location.search}`;

/** The figure of the sheet that the page wrote down, or where it wrote none, the one that it shows. */
function pictureFor(written: Written): Picture {
  if (written.fragment !== undefined) return figureOfAddress(wishOf(written));
  const figure = document.querySelector('#figure');
  if (figure === null) throw new RangeError('pictureFor: the page must show a figure, got none');
  const { title = '', assumptions = '', version = '' } = written;
  return shownFigure(figure, {
    title,
    assumptions: assumptions.split('\n'),
    address: addressOf(written),
    version,
  });
}

/** Copies or saves the figure; answers how that went. Rejects where the browser cannot draw. */
export async function takeFigure(kind: string, written: Written): Promise<string> {
  const picture = pictureFor(written);
  if (kind === 'copy') {
    const image = { 'image/png': pngOf(picture) };
    return navigator.clipboard.write([new ClipboardItem(image)]).then(
      () => strings.copied,
      () => strings.refused,
    );
  }
  const name = fileName(written.title ?? '', kind);
  if (kind === 'svg') saveFile({ name, type: 'image/svg+xml', content: picture.svg });
  else saveFile({ name, type: 'image/png', content: await pngOf(picture) });
  return strings.saved(name);
}

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

/**
 * What the frame may do: run this site's script as this site's, which its figures and its typeface need, and open the page that it is
 * from in a tab of its own. Not: leave the page around it, ask, download, or send forms.
 */
const SANDBOX = 'allow-scripts allow-same-origin allow-popups allow-popups-to-escape-sandbox';
/** Size of the frame, in CSS pixels: its width where the page around takes no styles; what is higher scrolls within it. */
const WIDTH = 720;
const HEIGHT = 800;

/** A figure and where it is from, both as full addresses. */
export interface Framed {
  readonly title: string;
  readonly address: string;
  readonly source: string;
}

/** HTML that shows a figure of this site on another page, with a link to where it is from for those who see no frame. */
export function embedSnippet({ title, address, source }: Framed): string {
  const name = escaped(title);
  return `<iframe src="${escaped(address)}" title="${name}" width="${WIDTH}" height="${HEIGHT}" style="width: 100%; border: 0" loading="lazy" referrerpolicy="no-referrer" sandbox="${SANDBOX}"></iframe>
<p><a href="${escaped(source)}">${name}</a></p>`;
}

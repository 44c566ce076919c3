/** What may stand in a web address without harm in Markdown, BBCode and running text. */
const HARMFUL = /[^A-Za-z0-9\-._~/?#&=:%+]/gu;

/**
 * A web address that can be given to others, harmful signs escaped by percent; undefined for anything but http and https:
 * a saved copy's own place is of no use to others.
 */
export function shareableLink(url: string): string | undefined {
  if (!/^https?:\/\/[^\s/?#]/i.test(url)) return undefined;
  // encodeURIComponent leaves ' ( ) * ! as they are, which break links in forums.
  return url
    .toWellFormed()
    .replace(HARMFUL, (char) =>
      encodeURIComponent(char).replace(/['()*!]/g, (mark) => `%${mark.charCodeAt(0).toString(16)}`),
    );
}

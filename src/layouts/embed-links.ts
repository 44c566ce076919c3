/** An address with another state in it: that of a figure, where the link leads to the same figure. */
export const withState = (href: string, search: string): string => {
  const url = new URL(href);
  url.search = search;
  return url.href;
};

/** Makes the link of an embedded figure lead to its source with the state that the figure has when the link is used. */
export function startEmbed(link: HTMLAnchorElement): void {
  const follow = (): void => {
    link.href = withState(link.href, location.search);
  };
  // before the browser looks at the address: to show it, to copy it, to go there
  for (const event of ['pointerover', 'focus', 'click']) link.addEventListener(event, follow);
}

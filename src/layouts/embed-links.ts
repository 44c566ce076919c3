/** The address that a link of an embedded figure leads to: with the state that the figure has, where the link is to the same figure. */
export const withState = (href: string, search: string): string => {
  const url = new URL(href);
  url.search = search;
  return url.href;
};

/** Opens an address beside the page around the frame; `false` where the frame may not. */
function opensBeside(href: string): boolean {
  const opened = window.open(href, '_blank');
  if (opened === null) return false;
  opened.opener = null;
  return true;
}

/**
 * Makes the links of an embedded figure lead out of the frame, those to its source with the figure's state. Where the frame may open
 * nothing, and without script, they lead on within the frame.
 */
export function startEmbed(links: Iterable<HTMLAnchorElement>): void {
  for (const link of links) {
    const follow = (): void => {
      if (link.dataset.state !== undefined) link.href = withState(link.href, location.search);
    };
    // before the browser looks at the address: to show it, to copy it, to go there
    for (const event of ['pointerover', 'focus', 'click']) link.addEventListener(event, follow);
    link.addEventListener('click', (event) => {
      const plain = !(event.ctrlKey || event.metaKey || event.shiftKey || event.altKey);
      if (window.parent !== window && plain && opensBeside(link.href)) event.preventDefault();
    });
  }
}

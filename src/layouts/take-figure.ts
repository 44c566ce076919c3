/** Makes the buttons under an example hand its figure out; all that draws it is fetched with the first of them. */
export function startFigure(place: HTMLElement): void {
  const told = place.querySelector('[role="status"]');
  const { dataset } = place;
  place.addEventListener('click', async ({ target }) => {
    const kind = target instanceof HTMLElement ? target.dataset.take : undefined;
    if (kind === undefined || !told) return;
    told.textContent = '';
    try {
      const { takeFigure } = await import('./taken-figure.ts');
      told.textContent = await takeFigure(kind, dataset);
    } catch {
      told.textContent = dataset.failed ?? ''; // written by the page, so that these few lines weigh nothing
    }
  });
}

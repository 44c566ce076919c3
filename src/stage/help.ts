import { keepSigns, keptSigns } from '../store/signs.ts';

const dialog = (): HTMLDialogElement | null => document.querySelector<HTMLDialogElement>('#stage-keys');

/** Shows what the keys do. */
export function openHelp(): void {
  const shown = dialog();
  if (shown && !shown.open) shown.showModal();
}

/** Makes the switch for keys of one sign show and keep what was chosen. */
export function startHelp(): void {
  const signs = dialog()?.querySelector<HTMLInputElement>('input[type="checkbox"]');
  if (!signs) return;
  signs.checked = keptSigns();
  signs.addEventListener('change', () => keepSigns(signs.checked));
}

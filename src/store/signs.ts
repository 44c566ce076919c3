const KEY = 'stage:keys-of-one-sign';

/** Whether the stage hears keys of one sign: it does until somebody switches them off. */
export function keptSigns(): boolean {
  try {
    return localStorage.getItem(KEY) !== 'off';
  } catch {
    return true;
  }
}

/** Keeps the choice in this browser; false where the browser refuses. */
export function keepSigns(on: boolean): boolean {
  try {
    localStorage.setItem(KEY, on ? 'on' : 'off');
    return true;
  } catch {
    return false;
  }
}

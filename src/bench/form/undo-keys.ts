/** What matters of a key that was pressed. */
export interface PressedKey {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
}

/** What a key asks for: Ctrl or Command with Z takes back; with Shift and Z, or with Y, it does again. */
export function undoKey({
  key,
  ctrlKey,
  metaKey,
  shiftKey,
  altKey,
}: PressedKey): 'undo' | 'redo' | undefined {
  if (!(ctrlKey || metaKey) || altKey) return undefined;
  switch (key.toLowerCase()) {
    case 'z':
      return shiftKey ? 'redo' : 'undo';
    case 'y':
      return shiftKey ? undefined : 'redo';
    default:
      return undefined;
  }
}

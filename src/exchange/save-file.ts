/** A file to be saved by the reader. */
export interface FileToSave {
  readonly name: string;
  readonly content: string | Blob;
  readonly type: string;
}

/** How long the browser may take to begin with a file that was offered to it. */
const PATIENCE_MS = 60_000;

/** Hands a file to the browser, which saves it or asks where to. */
export function saveFile({ name, content, type }: FileToSave): void {
  const url = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.hidden = true;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(url), PATIENCE_MS);
}

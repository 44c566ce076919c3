import { type Part, partAddress } from '../talk.ts';

/** Fetches, or says what was missing. @throws Error where the answer is no page. */
export async function fetched(address: string): Promise<Response> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`stage: ${address} must be there, got ${response.status}`);
  return response;
}

export const textOf = async (address: string): Promise<string> => (await fetched(address)).text();

/** A page as the site has it, not as the reader left it. */
export async function pageAt(address: string): Promise<Document> {
  return new DOMParser().parseFromString(await textOf(address), 'text/html');
}

/** The address of the page that a part is on, without what follows the path. */
export const pageOfPart = (part: Part): string =>
  partAddress(part, { isNotes: false, turn: 1 }).replace(/[?#].*$/, '');

/** The pages that a talk borrows from, each once, by their addresses; one that is missing is left out. */
export async function pagesOf(parts: readonly Part[]): Promise<ReadonlyMap<string, Document>> {
  const addresses = [...new Set(parts.map(pageOfPart))];
  const found = await Promise.all(addresses.map((address) => pageAt(address).catch(() => undefined)));
  return new Map(addresses.flatMap((address, at) => (found[at] ? [[address, found[at]] as const] : [])));
}

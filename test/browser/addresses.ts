import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const corpus = fileURLToPath(new URL('../corpus/', import.meta.url));

/** Whether the text is an address of the site that carries a state. */
const carriesState = (text: string): boolean => /^\/\S*[?#]\S+$/.test(text);

/** Addresses in a text file, one a line, or anywhere in a JSON file. */
function addressesIn(file: string): readonly string[] {
  const text = readFileSync(corpus + file, 'utf8');
  if (file.endsWith('.txt')) return text.split('\n').map((line) => line.trim());
  const found: string[] = [];
  JSON.parse(text, (_key, value: unknown) => {
    if (typeof value === 'string') found.push(value);
    return value;
  });
  return found;
}

/** The addresses of states that were ever given out: each has to open for ever. */
export function stateAddresses(): readonly string[] {
  if (!existsSync(corpus)) return [];
  const files = readdirSync(corpus).filter((file) => /\.(txt|json)$/.test(file));
  return [...new Set(files.flatMap(addressesIn).filter(carriesState))];
}

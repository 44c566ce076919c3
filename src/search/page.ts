import type { Hit } from './engine.ts';
import { type Ask, fetchedOnce } from './fetched.ts';
import { queryIn } from './query.ts';
import { resultOf } from './result.ts';
import { MOST_SHOWN, strings } from './strings.ts';

/** Rest after the last letter before results change and the address follows, in ms. */
const REST_MS = 200;

interface Places {
  readonly input: HTMLInputElement;
  readonly told: Element;
  readonly list: Element;
  /** What stands before every path of the site. */
  readonly base: string;
}

/** Answers the query that stands in the field; a later one overtakes it. */
function answering({ input, told, list, base }: Places, fetchAsk: () => Promise<Ask>): () => Promise<void> {
  let asked: string | undefined = '';
  const tell = (words: string, hits: readonly Hit[]): void => {
    list.replaceChildren(...hits.slice(0, MOST_SHOWN).map((hit) => resultOf(hit, base)));
    told.textContent = words;
  };
  return async () => {
    const query = input.value.trim();
    if (query === asked) return;
    asked = query;
    const address = query === '' ? location.pathname : `?${new URLSearchParams({ q: query })}`;
    try {
      history.replaceState(history.state, '', address);
    } catch {
      // some browsers refuse many changes in a short time; what is found does not hang on it
    }
    if (query === '') return tell('', []);
    if (list.childElementCount === 0) told.textContent = strings.loading;
    try {
      const { said, whole, hits } = (await fetchAsk())(query);
      if (query === asked) tell(said ? strings.told(hits.length, whole) : strings.nothingAsked, hits);
    } catch {
      if (query !== asked) return;
      asked = undefined; // so that the same query may be tried again
      tell(strings.failed, []);
    }
  };
}

/** Makes the search work: results follow the typing, the address follows the query, and how many there are is told politely. */
export function startSearch(part: HTMLElement): void {
  const form = part.querySelector('form');
  const input = part.querySelector('input');
  const told = part.querySelector('[role="status"]');
  const list = part.querySelector('ol');
  if (!form || !input || !told || !list) return;
  const { index = '', base = '' } = part.dataset;
  const fetchAsk = fetchedOnce(index);
  const answer = answering({ input, told, list, base }, fetchAsk);
  let timer: ReturnType<typeof setTimeout> | undefined;
  const fetchAhead = (): void => void fetchAsk().catch(() => undefined);
  input.addEventListener('focus', fetchAhead, { once: true });
  input.addEventListener('input', () => {
    clearTimeout(timer);
    timer = setTimeout(answer, REST_MS);
  });
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    clearTimeout(timer);
    void answer();
  });
  if (input.value === '') input.value = queryIn(location.search); // what was typed before the script came stays
  void answer();
}

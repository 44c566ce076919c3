import { replaceAddress } from '../../address/replace-address.ts';
import { aheadOf } from '../keep/mark.ts';

const KEY = 'address-not-written';

/**
 * Keeps an address that the page, which is being left, cannot have any more, for the page that a reload opens in its place: a browser
 * that has begun to leave a page goes by the address before. Where nothing can be kept, that one stays.
 */
export function keepUnwritten(url: string): void {
  try {
    sessionStorage.setItem(KEY, JSON.stringify([location.href, url]));
  } catch {
    // refused or full: what was typed in the last moment is lost
  }
}

/** Gives a page that was opened again the address that the one before it could not have any more. */
export function catchUp(): void {
  try {
    const kept = sessionStorage.getItem(KEY);
    if (kept === null) return;
    sessionStorage.removeItem(KEY);
    const [navigation] = performance.getEntriesByType('navigation');
    const [href, url]: unknown[] = JSON.parse(kept);
    const isAgain = navigation && 'type' in navigation && navigation.type !== 'navigate';
    if (isAgain && href === location.href && typeof url === 'string') replaceAddress(url, aheadOf);
  } catch {
    // refused, or not what was put there: the address stays
  }
}

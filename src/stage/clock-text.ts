const two = (count: number): string => String(count).padStart(2, '0');

/** Time of day: `19:05`. */
export const clockText = (hours: number, minutes: number): string => `${two(hours)}:${two(minutes)}`;

/** How long something has gone on, in minutes and whole seconds: `7:03`, `83:00`. A clock that was set back says `0:00`. */
export function spanText(milliseconds: number): string {
  const seconds = Math.max(0, Math.floor(milliseconds / 1000));
  return `${Math.floor(seconds / 60)}:${two(seconds % 60)}`;
}

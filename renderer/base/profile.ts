/** What the window's profile keeps under a key; null where it keeps nothing. */
export const readProfile = (key: string): string | null =>
  typeof localStorage === 'undefined' ? null : localStorage.getItem(key);

/** Keeps something in the window's profile; outside of a window nothing is kept. */
export function keepInProfile(key: string, value: string): void {
  if (typeof localStorage !== 'undefined') localStorage.setItem(key, value);
}

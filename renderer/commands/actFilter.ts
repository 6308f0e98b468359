import type { KeyEntry } from './keyTable.ts';

/** Acts whose label or group holds every typed word, those that begin with the first one before the others. */
export function filterActs<E extends Pick<KeyEntry, 'label' | 'group'>>(
  entries: readonly E[],
  typed: string,
): readonly E[] {
  const words = typed
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  const [first] = words;
  if (first === undefined) return entries;
  const matching = entries.filter(({ label, group }) => {
    const text = `${label} ${group}`.toLowerCase();
    return words.every((word) => text.includes(word));
  });
  const begins = ({ label }: E): number => (label.toLowerCase().startsWith(first) ? 0 : 1);
  return [...matching].sort((a, b) => begins(a) - begins(b));
}

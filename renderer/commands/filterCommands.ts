import type { BoundCommand } from './boundCommand.ts';

type Listed = { readonly face: Pick<BoundCommand['face'], 'label' | 'group'> };

/** Commands whose label or group holds every typed word, those that begin with the first word before the others. */
export function filterCommands<C extends Listed>(commands: readonly C[], typed: string): readonly C[] {
  const words = typed
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  const [first] = words;
  if (first === undefined) return commands;
  const matching = commands.filter(({ face }) => {
    const text = `${face.label} ${face.group}`.toLowerCase();
    return words.every((word) => text.includes(word));
  });
  const begins = ({ face }: C): number => (face.label.toLowerCase().startsWith(first) ? 0 : 1);
  return matching.toSorted((a, b) => begins(a) - begins(b));
}

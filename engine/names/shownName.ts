/** How a trainee is named in what leaves the desk. */
export const nameModes = ['full', 'first', 'initials', 'none'] as const;
export type NameMode = (typeof nameModes)[number];

/** Replaces a hidden name, in every language. */
const nobody = 'Trainee';

const partsOf = (fullName: string): string[] => fullName.trim().split(/\s+/u);

const graphemes = new Intl.Segmenter(undefined, { granularity: 'grapheme' });

/** The first character of a word as people count them, with a full stop. */
function initial(word: string): string {
  const [first] = graphemes.segment(word);
  return `${first?.segment ?? word}.`;
}

/** A name as the trainee wants it shown; never empty. */
export function shownName(fullName: string, mode: NameMode): string {
  const parts = partsOf(fullName);
  switch (mode) {
    case 'full':
      return fullName;
    case 'first':
      return parts[0] ?? fullName;
    case 'initials':
      return parts.map(initial).join('');
    case 'none':
      return nobody;
  }
}

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/-]/g, '\\$&');

/** Matches whole words only. */
const alone = (pattern: string, flags: string): RegExp =>
  new RegExp(`(?<![\\p{L}\\p{M}])${pattern}(?![\\p{L}\\p{M}])`, flags);

/** "von", "de la" and single letters occur in many sentences that name nobody. */
const isTelling = (part: string): boolean => /^[^\p{Ll}]/u.test(part) && [...part].length > 1;

/**
 * Hides a name in texts as the trainee wants: the full name becomes the shown one, and a part that is not shown becomes
 * its initial or "Trainee". `anyCase` is for file names and titles, where capitals don't count.
 */
export function nameHider(
  fullName: string,
  mode: NameMode,
): (text: string, how?: { readonly anyCase: boolean }) => string {
  if (mode === 'full') return (text) => text;
  const shown = shownName(fullName, mode);
  const parts = partsOf(fullName);
  const hidden = parts.filter((part) => part !== shown && isTelling(part));
  const whole = parts.map(escaped).join('[\\s_.-]+');
  return (text, how) => {
    const flags = how?.anyCase === true ? 'giu' : 'gu';
    const told = text.replace(alone(whole, flags), () => shown);
    return hidden.reduce(
      (rest, part) => rest.replace(alone(escaped(part), flags), () => (mode === 'none' ? nobody : initial(part))),
      told,
    );
  };
}

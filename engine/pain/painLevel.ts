const numberWords: Readonly<Record<string, number>> = {
  zero: 0,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  null: 0,
  eins: 1,
  zwei: 2,
  drei: 3,
  vier: 4,
  fuenf: 5,
  sechs: 6,
  sieben: 7,
  acht: 8,
  neun: 9,
  zehn: 10,
};
const word = Object.keys(numberWords).join('|');
const figure = `(?:\\d+(?:[.,]\\d+)?|${word})`;

/** "4/10", "a 6 out of ten", "7 von 10", "3-4 of 10": the number, or the end of a span, and what it is out of. */
const outOf = new RegExp(
  `\\b(?:${figure}\\s*(?:-|to|bis|or|oder)\\s*)?(${figure})\\s*(?:\\/|out of|of|von|auf|aus)\\s*(?:a )?(10|100|5|ten|zehn)\\b(?!\\s*(?:reps?|sets?|wdh|wiederholungen|saetzen?))`,
  'g',
);

/** What makes a number count something else: sets, reps, weeks, loads, times. */
const counted =
  "(?:\\s*(?:-|to|bis|or|oder)\\s*\\d+)?\\s*(?:st|nd|rd|th|te[rnms]?|x|%|kg|kilos?|lbs?|pounds?|pfund|cm|mm|sets?|reps?|rounds?|weeks?|days?|months?|years?|hours?|hrs?|minutes?|mins?|seconds?|secs?|times|sessions?|exercises?|lifts?|knees|shoulders|saetzen?|satz|wdh|wiederholung(?:en)?|wochen?|tagen?|monaten?|jahren?|stunden?|minuten?|sekunden?|mal|einheiten|uebungen|uhr|am|pm|o'clock|januar|februar|maerz|april|mai|juni|juli|august|september|oktober|november|dezember|january|february|march|may|june|july|october|december)(?![a-z])";
const places =
  '(?:sets?|reps?|rounds?|sessions?|weeks?|days?|no\\.?|nr\\.?|number|number of|saetzen?|satz|wdh|wiederholung(?:en)?|wochen?|tag|einheit|[lcst])\\s*(?:\\d+\\s*(?:,|and|und|-|to|bis|or|oder)\\s*)*$';
const bare = new RegExp(
  `(?<![\\d.,:/x×-])(?<![a-z])(?:(${figure})\\s*(?:-|to|bis|or|oder)\\s*)?(${figure})(?![\\d:]|[.,]\\d|[a-z]|\\s*[/×])`,
  'g',
);
/** A number in words is a level only after one of these: "the left one" is none. */
const beforeWord =
  /(?:\ba|\ban|about|around|maybe|level|level of|at|to|pain|of|like|roughly|was|is|now|today|only|staerke|stufe|bei|etwa|ungefaehr|ca\.?|eine?|auf|schmerz(?:en|staerke|skala)?)\s+$/;

const levelOf = (written: string): number => numberWords[written] ?? Number(written.replace(',', '.'));

function statedOutOf(words: string): { readonly levels: readonly number[]; readonly rest: string } {
  const levels = [...words.matchAll(outOf)].map(([, value = '', scale = '']) => {
    const of = scale === 'ten' || scale === 'zehn' ? 10 : Number(scale);
    return Math.min(10, (levelOf(value) / of) * 10);
  });
  return { levels, rest: words.replace(outOf, ' ') };
}

function isCounted(words: string, from: number, to: number): boolean {
  return (
    new RegExp(`^${counted}`).test(words.slice(to)) || new RegExp(`(?:^|[^a-z])${places}`).test(words.slice(0, from))
  );
}

/**
 * Every number on the scale from 0 to 10 that words state, in their order: as a fraction, as a span (its upper end), in
 * words, or bare where it counts nothing else. `words` in small letters, umlauts written out.
 */
export function levelsStated(words: string): readonly number[] {
  const { levels, rest } = statedOutOf(words);
  const others = [...rest.matchAll(bare)].flatMap((match) => {
    const [all, low, high = ''] = match;
    const value = levelOf(high);
    const from = match.index;
    if (isCounted(rest, from, from + all.length) || value > 10) return [];
    const inWords = !/\d/.test(high);
    return inWords && low === undefined && !beforeWord.test(rest.slice(0, from)) ? [] : [value];
  });
  return [...levels, ...others];
}

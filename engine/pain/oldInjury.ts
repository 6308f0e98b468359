/** Words that place something months or years back. */
const longAgo =
  /\b(?:months?|years?) (?:ago|back)\b|\blast year\b|\bin (?:19|20)\d\d\b|\b(?:old|former|previous|previously|earlier)\b(?<!years? old)|\bas a (?:kid|child|teenager)\b|\bvor (?:\w+ ){0,2}(?:monaten|jahren|jahr)\b|\bletztes jahr\b|\b(?:frueher|frueheren?|damals|alte[nrms]?|ehemalige[nrms]?)\b/;

/** What names an injury or its treatment, and no pain of today. */
const injury =
  /\b(?:injur(?:y|ies|ed)|hurt|torn|tore|tear|rupture[ds]?|sprain(?:ed)?|strain(?:ed)?|tweak(?:ed)?|pulled|broken?|fractured?|dislocat(?:ed|ion)|surgery|operat(?:ed|ion)|popped|verletz(?:t|te|ung(?:en)?)|(?:an)?gerissen|riss|gezerrt|zerrung|gebrochen|bruch|ausgekugelt|operiert|operation|op)\b|(?:verletzung(?:en)?|riss|bruch|zerrung|operation)\b/g;

/**
 * What a clause says beside an injury of months or years ago, "torn meniscus five years ago"; null where it tells of none.
 * `words` in small letters, umlauts written out.
 */
export function besideOldInjury(words: string): string | null {
  const told = longAgo.test(words) && words.search(injury) >= 0;
  return told ? words.replace(injury, ' ') : null;
}

const symptom =
  '(?:pains?|painful|hurts?|hurting|ach(?:es?|y|ing)|sore(?:ness)?|discomfort|numb(?:ness)?|tingl(?:es?|ing|y)|pins and needles|swelling|swollen|swell|weak(?:ness)?|symptoms?|issues?|problems?|complaints?|troubles?|niggles?|twinges?|stiff(?:ness)?|radiat(?:es?|ing|ion)|shooting(?: pains?)?|locking|clicking|worse(?:ning)?|increas(?:e[ds]?|ing)|rising|chest pains?|night pain|dizz(?:y|iness)|faint(?:ed|ing)?|giving way|redness|schmerz(?:en|haft|t|te)?|beschwerden?|probleme?n?|taub(?:heit)?(?:sgefuehle?)?|kribbeln|ausstrahl(?:ung(?:en)?|end|t)|schwellung(?:en)?|geschwollen|schwaeche|schlimmer|staerker|schwindel(?:ig)?|weh)';
/** Words that may stand between a denial and what it denies; with others it denies something else ("no change in pain"). */
const between =
  '(?:(?!(?:and|or|but|change|changes|improvement|relief|less|better|doubt|idea|difference|matter|reason|wonder|in|of|the|only|just|und|oder|aber|veraenderung|besserung|linderung|besser|weniger|nur|der|die|das)\\b)[a-z-]+\\s+){0,3}?';
const andMore = `(?:\\s*(?:,|\\/|\\bor\\b|\\band\\b|\\bnor\\b|\\bund\\b|\\boder\\b|\\bnoch\\b)+\\s*(?:any\\s+|no\\s+|keine?n?\\s+)?(?:[a-z]+\\s+)?${symptom}\\b)*`;

const denied = [
  new RegExp(
    `\\b(?:no|not|without|never|neither|nor|zero|keine?[nmrs]?|ohne|nicht|nie|weder)\\s+${between}${symptom}\\b${andMore}`,
    'g',
  ),
  new RegExp(`\\b(?:[a-z]+n't)\\s+${between}${symptom}\\b${andMore}`, 'g'),
  /\b(?:schmerzt|schmerzte|schmerzen)\s+(?:mir\s+)?(?:gar |ueberhaupt )?nicht(?:\s+mehr)?\b/g,
  /\b(?:pain|symptom|ache|schmerz|beschwerde|symptom)e?n?[- ]?(?:free|frei(?:e[nrms]?)?|los)\b|\bpainless(?:ly)?\b|\bfree (?:of|from) pain\b/g,
  /\b(?:pain|ache|soreness|schmerz(?:en)?)\s+(?:is |has |are |have |ist |sind )?(?:now |all |completely |ganz |jetzt )?(?:gone|went away|settled|weg|abgeklungen|verschwunden)\b/g,
  /\bnothing\s+(?:hurts?|hurting|aches|sore|wrong|to report|to mention|really)\b|\bnichts\s+(?:tut\s+(?:mir\s+)?weh|zu (?:melden|berichten)|auffaelliges)\b|\b(?:tut|tat|taten|tun)\s+(?:mir\s+)?nichts?\s+(?:mehr\s+)?weh\b/g,
  /\b(?:feels?|felt|feeling|was|is|were|are|been|all|fuehlt(?:e)? sich|war|ist|waren|sind|alles)\s+(?:all |completely |totally |perfectly |absolutely |wieder |ganz |voellig |soweit |back to |now |jetzt )*(?:fine|ok|okay|good|great|normal|clear|well|gut|in ordnung|bestens|unauffaellig|super)\b/g,
  /\b(?:merke|merkte|spuere|spuerte)\s+(?:jetzt |heute |davon |inzwischen |dort |da )*(?:gar )?nichts(?!(?:\s+mehr)?\s+(?:im|in|am|an)\b)(?:\s+mehr)?/g,
  /\b(?:doesn't|does not|didn't|did not|no longer|never)\s+(?:bothers?|troubles?|bothered)(?:\s+me)?(?:\s+(?:any ?more|now|at all))*\b|\bstoert\s+(?:mich\s+)?nicht(?:\s+mehr)?\b/g,
  /^\s*(?:none|nil|no|nope|nothing|n\/a|na|fine|all fine|-+|nein|keine?|nichts|alles gut)\s*$/g,
];

/** Pain in spite of a denying word: "can't squat without pain", "not pain-free", "hope to be pain-free". */
const inSpite =
  /\b(?:not|no|cannot|[a-z]+n't|hardly|barely|never|rarely|nicht|kaum|nie|selten|keine?[nmrs]?)\b[^.;,!?]{0,40}\b(?:without|ohne)\b[^.;,!?]{0,20}?\b(?:pain|discomfort|schmerz(?:en)?|beschwerden)\b|\b(?:not|[a-z]+n't|nicht|never|nie|want|hope|hoping|wish|goal|almost|nearly|mostly|fast|beinahe|groesstenteils|moechte|will|hoffe)\b[^.;,!?]{0,30}\b(?:pain|schmerz|beschwerde)[- ]?(?:free|frei)\b|\b(?:not|[a-z]+n't|nicht)\s+(?:\w+\s+){0,2}(?:fine|ok|okay|good|great|right|normal|gut|in ordnung)\b|\b(?:without|ohne)\s+(?:pain|schmerz(?:en)?)\s[^.;,!?]{0,30}\b(?:no|not|[a-z]+n't|keine?[nmrs]?|nicht)\b/g;

/** A denial that holds only some of the time: under load it may well hurt. */
const onlyPartly =
  /\b(?:until|till|unless|except|apart from|other than|besides|as long as|if|at rest|resting|at first|outside training|sitting|bis|ausser|abgesehen|solange|wenn|in ruhe|anfangs|zuerst|im alltag)\b/;

/** One clause of a note, with what it denies taken out. */
export type Clause = {
  readonly rest: string;
  readonly denial: 'none' | 'whole' | 'partial';
};

/**
 * The clauses of a note. "No pain, numbness or tingling" is one denial, and "no pain at rest" a partial one. `words` in small
 * letters, umlauts written out.
 */
export function clausesOf(words: string): readonly Clause[] {
  const inSentences = words
    .replace(inSpite, ' pain ')
    .split(/[.!?;\n]+(?!\d)|\s(?:but|however|though|although|yet|aber|jedoch|allerdings|doch|sondern)\s/);
  return inSentences.flatMap((said) => {
    const denying = denied.reduce((left, pattern) => left.replace(pattern, ' ~ '), said);
    return denying.split(/,(?!\d)|\s[-–]\s/).flatMap((part): Clause[] => {
      if (part.trim() === '') return [];
      const denies = part.includes('~');
      const rest = part.replaceAll('~', ' ');
      if (!denies) return [{ rest, denial: 'none' }];
      return [{ rest, denial: onlyPartly.test(rest) ? 'partial' : 'whole' }];
    });
  });
}

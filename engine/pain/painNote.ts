import { alongTheNerve, areasNamed, type BodyArea } from './bodyAreas.ts';
import { type Clause, clausesOf } from './denials.ts';
import { besideOldInjury } from './oldInjury.ts';
import { levelsStated } from './painLevel.ts';

/** What a note on pain says, as far as its words go; it judges nothing. */
export type PainReading =
  /** No note, or one that says that nothing hurts. */
  | { readonly kind: 'none' }
  | {
      readonly kind: 'pain';
      /** The parts of the body it names, with signs of a nerve the whole limb and its part of the back; `all` where it names none that is known. */
      readonly areas: ReadonlySet<BodyArea> | 'all';
      /** On the scale from 0 to 10, the highest that is stated of now; null where none is. */
      readonly level: number | null;
      readonly rising: boolean;
      /** It is sharp: it stabs, pinches or stings, whatever its number. */
      readonly sharp: boolean;
      /** It says that the pain was gone before the session ended. */
      readonly settled: boolean;
      /** Numbness, tingling, pain that shoots or spreads into a limb, weakness. */
      readonly nerveSigns: boolean;
      /** Signs that call for a clinician soon, or for the emergency services now. */
      readonly redFlag: 'none' | 'soon' | 'emergency';
    };

const plain = (note: string): string =>
  note
    .normalize('NFC')
    .toLowerCase()
    .replaceAll('ä', 'ae')
    .replaceAll('ö', 'oe')
    .replaceAll('ü', 'ue')
    .replaceAll('ß', 'ss')
    .replace(/[‘’ʼ]/g, "'")
    .replace(/[‐-―−]/g, '-')
    .replace(/(\d)\.\s*(?=(?:satz|saetze|wiederholung|wdh|serie|tag|woche|runde|einheit|mal)\b)/g, '$1te ');

const hurting =
  /\bpain|\bach(?:e[sd]?|ing|y)\b|\bhurt|\bsore|\bstiff|\btight|\btwing|\bniggl|\bsting|\bstab|\bsharp|\bpinch|\bburn|\bthrob|\btender|\btweak|\bstrain|\bsprain|\bdiscomfort|\buncomfort|\birritat|\bbother|\binjur|\bpull(?:ed|ing)\b|\bpop|\bclick|\bgrind|\bcramp|schmerz|\bweh\b|\bzwick|\bzwack|\bziehe|\bzieht|\bzog\b|\bstech|\bsticht|\bbrenn|\bdrueck|\bdruck\b|verspann|\bsteif|unangenehm|beschwerd|\bgereizt|\bzerr|verletz|\bknack|\bknirsch/;

const situational = /\bworse\s+(?:at|in|near|when|if)\b(?!\s+(?:the\s+)?(?:morning|evening|night|next))/g;
const risingWords =
  /\bworse|\bworsen|\bincreas|\brising\b|\brises\b|\brose\b|\bclimb(?:s|ed|ing)\b|\bgo(?:es|ing|ne)? up\b|\bwent up\b|\bbuilds? up|\bbuilding up|\bgrow(?:s|ing)\b|\bgrew\b|\bstronger\b|\bescalat|\bmore (?:each|every|with each|with every)\b|\bfrom (?:a )?\d+ to (?:a )?\d+|\bschlimmer|\bstaerker|\bzunehm|\bzugenommen|\bnimmt zu\b|\bnahm zu\b|\bsteig|\bstieg|\bgestiegen|\bvon \d+ auf \d+|\bimmer mehr\b|\bverschlechter/;
const falling = /\bfrom (?:a )?(\d+) to (?:a )?(\d+)|\bvon (\d+) auf (\d+)/g;

const nerveWords =
  /\bnumb|\btingl|\bpins and needles|\belectric|\bzap|\bshoot(?:s|ing)\b|\bshot down\b|\bradiat|\b(?:down|into|along) (?:the |my |one |both |his |her |a )?(?:\w+ )?(?:legs?|arms?|hands?|foot|feet|fingers?|toes?|calf|thighs?|buttocks?)\b|\bspread(?:s|ing)?\b|\bsciatic|\bweakness\b|\b(?:arm|leg|hand|grip|foot|knee)s? (?:is |are |was |were |feels? |felt |went |goes |gets? )(?:\w+ )?weak|\bweak (?:arm|leg|hand|grip|foot)|\bg(?:ives?|ave|iving) way|\bfell asleep|\bfalls asleep|\bdead (?:arm|leg)|\btaub|\bkribbel|\bausstrahl|\bstrahl(?:t|te)\b|\beinschiess|\bschiess|\bschoss\b|\bameisen|\belektris|\bstromschlag|\bschwaeche\b|\bkraftlos|\beingeschlafen|\bbis (?:in|zu) (?:den|die|das|der|dem|die linke|die rechte)?\s*(?:\w+\s)?(?:bein|fuss|zehen?|arm|hand|finger|wade|gesaess)|\bzieht (?:ins|in den|in die|runter)|\bknickt\w* (?:weg|ein)/;

const emergencyWords =
  /\bchest[- ](?:pain|pressure|tightness)|\b(?:pain|pressure|tightness) (?:in|on|across) (?:my |the )?chest|\btight chest|\bchest (?:hurts|hurt|feels? tight|felt tight|was tight|is tight)|\bfaint|\bpassed out|\bblack(?:ed)? ?out|\bshort(?:ness)? of breath|\bcan'?t breathe|\bslurred|\bsaddle|\bnumb between|\bbladder|\bbowel|\bincontinen|\bworst headache|\bsudden headache|\bsevere headache|\bbrustschmerz|\bbrustenge|\b(?:schmerz(?:en)?|druck|enge|stechen) (?:in|auf|ueber) (?:der|die|meiner) brust|\bohnmacht|\bohnmaechtig|\bbewusstlos|\bkollabier|\batemnot|\bluftnot|\bkeine luft|\bblase\b|\bstuhlgang|\binkontinen|\btaub\w* zwischen|\bheftige\w* kopfschmerz/;

const soonWords =
  /\bnight pain|\b(?:at|every|during the|all|last) nights?\b|\bw[oa]ke[sn]? me|\bwaking me|\bcan'?t sleep|\bcouldn'?t sleep|\bswell|\bswoll|\bpuffy|\block(?:s|ed|ing)\b(?!\s*out)|\bpopp(?:ed|ing)\b|\ba (?:loud )?pop\b|\bsnapp(?:ed|ing)\b|\bfever|\bdizz|\bdeform|\bbruis|\bcan'?t (?:walk|put weight)|\bnachts?\b|\bweckt mich|\bschlaf(?:e|en)? nicht|\bgeschwoll|\bschwell|\bdick (?:geworden|und)|\bblockier|\bknall|\bgerissen|\bfieber|\bschwindel|\bbluterguss/;

/** Clauses that tell of an earlier day; their number counts only where no other is stated. */
const past =
  /\blast (?:week|month|year|time|session)|\byesterday|\b(?:days?|weeks?|months?|years?) ago|\bpreviously|\bused to|\bletzte[nrs]? (?:woche|monat|jahr|mal|einheit)|\bgestern|\bvor (?:\w+ )?(?:tagen|wochen|monaten|jahren|einer woche|einem monat)|\bfrueher/;

const sharpWords = /\bsharp|\bstab|\bpinch|\bsting|\bstech|\bsticht|\bscharf|\bklemm/;

const goneWords = /\b(?:gone|settled|went away|disappeared|weg|verschwunden|gelegt|abgeklungen)\b/;
const otherSide = /\b(?:other|andere[nrms]?)\b/;
const notGone = /\b(?:not|[a-z]+n't|nicht|never|nie|until|till|bis|if|wenn|once|almost|nearly|fast|kaum|barely)\b/;
const backAgain = /\b(?:came|comes?|is|was|gets?) back\b|\breturn(?:s|ed)?\b|\bwiedergekommen|\bkam wieder\b|\bzurueck/;

/** "From 6 to 2" falls and "from 3 to 6" rises. */
function isRising(words: string): boolean {
  const spans = [...words.matchAll(falling)].map(([, a, b, c, d]) => Number(b ?? d) - Number(a ?? c));
  const rest = words.replace(situational, ' ').replace(falling, ' ');
  return spans.some((change) => change > 0) || risingWords.test(rest);
}

function highestLevel(clauses: readonly string[]): number | null {
  const now = clauses.filter((clause) => !past.test(clause)).flatMap(levelsStated);
  const stated = now.length > 0 ? now : clauses.flatMap(levelsStated);
  return stated.length === 0 ? null : Math.max(...stated);
}

const tellsOfPain = (words: string): boolean =>
  [hurting, nerveWords, emergencyWords, soonWords].some((signs) => signs.test(words)) ||
  levelsStated(words).some((level) => level > 0);

/** An injury of long ago in a place that the note says is well: "torn meniscus five years ago, the knee is fine now". */
function isHealed(clause: Clause, all: readonly Clause[]): boolean {
  const beside = besideOldInjury(clause.rest);
  if (beside === null || clause.denial === 'partial' || tellsOfPain(beside) || isRising(beside)) return false;
  const injured = areasNamed(clause.rest);
  return all.some(({ rest, denial }) => {
    const well = areasNamed(rest);
    const samePlace = well.size === 0 || [...injured].every((area) => well.has(area));
    return denial === 'whole' && samePlace && !otherSide.test(rest);
  });
}

/**
 * Reads a trainee's own words on pain, English or German. When in doubt it is pain: a note counts as a denial only if some
 * clause denies and none complains. The scale and its steps: pain-monitoring model, Thomeé 1997 (from memory); the signs: general
 * red-flag advice (from memory).
 */
export function readPainNote(note: string): PainReading {
  const words = plain(note).trim();
  if (words === '') return { kind: 'none' };
  const clauses = clausesOf(words);
  const said = clauses.map(({ rest }) => rest).join(' . ');
  const nerveSigns = nerveWords.test(said);
  const redFlag = emergencyWords.test(said) ? 'emergency' : soonWords.test(said) ? 'soon' : 'none';
  const complaints = clauses.filter(
    (clause) =>
      !isHealed(clause, clauses) &&
      (clause.denial === 'partial' ||
        tellsOfPain(clause.rest) ||
        (clause.denial === 'none' && (areasNamed(clause.rest).size > 0 || isRising(clause.rest)))),
  );
  const denies = clauses.some(
    ({ rest, denial }) =>
      denial === 'whole' || (levelsStated(rest).length > 0 && Math.max(...levelsStated(rest)) === 0),
  );
  if (complaints.length === 0 && denies) return { kind: 'none' };
  const areas = new Set(complaints.flatMap(({ rest }) => [...areasNamed(rest)]));
  const everywhere = areas.size === 0 || redFlag === 'emergency';
  return {
    kind: 'pain',
    areas: everywhere ? 'all' : nerveSigns ? alongTheNerve(areas) : areas,
    level: highestLevel(complaints.map(({ rest }) => rest)),
    rising: isRising(said),
    sharp: sharpWords.test(complaints.map(({ rest }) => rest).join(' . ')),
    settled: !backAgain.test(words) && clauses.some(({ rest }) => goneWords.test(rest) && !notGone.test(rest)),
    nerveSigns,
    redFlag,
  };
}

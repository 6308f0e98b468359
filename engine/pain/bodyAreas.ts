/** Parts of the body that a note on pain can name and a lift can load. */
export const bodyAreas = [
  'neck',
  'shoulder',
  'chest',
  'upperBack',
  'lowerBack',
  'abdomen',
  'elbow',
  'wrist',
  'hip',
  'groin',
  'glutes',
  'thigh',
  'hamstring',
  'knee',
  'calf',
  'ankle',
] as const;
export type BodyArea = (typeof bodyAreas)[number];

const arm: readonly BodyArea[] = ['shoulder', 'elbow', 'wrist'];
const leg: readonly BodyArea[] = ['hip', 'thigh', 'hamstring', 'knee', 'calf', 'ankle'];
const back: readonly BodyArea[] = ['upperBack', 'lowerBack'];

/** "Back" as a part of the body, not as in "came back" or "back again". */
const backItself =
  /(?:^|[,;:.!?(]\s*|\b(?:my|the|his|her|your|in|left|right|bad|sore|tight|stiff|whole|entire)\s+)back\b|(?<!\b(?:lower|low|upper|mid|middle)[ -])\bback\s*(?:pain|ache|hurt|tight|sore|spasm|felt|feels|twinge|stiff|is sore|is tight|hurts|\d)|\bbackaches?\b/;

/** Everyday words, English and German, umlauts written out as in "huefte". */
const named: readonly (readonly [pattern: RegExp, areas: readonly BodyArea[]])[] = [
  [/\bneck\b|\bnacken|\bhals\b|\bhws\b|\bcervical/, ['neck']],
  [/\btraps?\b|\btrapez/, ['neck', 'upperBack']],
  [
    /\bshoulder\b|\bshoulders\b|\bdelts?\b|\bdeltoids?\b|\brotator|\bcollar ?bone|\bac joint|schulter|\bschluesselbein/,
    ['shoulder'],
  ],
  [/\bshoulder blades?\b|\bschulterblatt|\bschulterblaetter/, ['shoulder', 'upperBack']],
  [/\bchest\b|\bpecs?\b|\bpectoral|\bsternum|\bribs?\b|\bbrust|\brippen?\b/, ['chest']],
  [/\b(?:upper|mid|middle)[ -]?back\b|\bthoracic|\blats?\b|\boberer? ruecken|\boberen ruecken|\bbws\b/, ['upperBack']],
  [
    /\b(?:lower|low)[ -]?back\b|\blumbar|\bsacr(?:um|oiliac)|\bsi joint|\bspinal erectors?|\bunterer? ruecken|\bunteren ruecken|\bkreuz(?!heb)|\blws\b|\blenden|\biliosakral|\bisg\b|\btail ?bone/,
    ['lowerBack'],
  ],
  [/(?<!unterer |unteren |untere |oberer |oberen |obere )\bruecken|\bspine\b|\bwirbel|\bdisc\b|\bbandscheib/, back],
  [/\babs\b|\babdom|\bstomach|\bbelly|\bobliques?\b|\bbauch/, ['abdomen']],
  [/\belbows?\b|\bbiceps\b|\btriceps\b|\bell(?:en)?bogen|\bbizeps|\btrizeps|\boberarm|\bupper arms?\b/, ['elbow']],
  [/\bbiceps\b|\btriceps\b|\bbizeps|\btrizeps|\boberarm|\bupper arms?\b/, ['shoulder']],
  [/\bforearms?\b|\bunterarm/, ['wrist', 'elbow']],
  [/\bwrists?\b|\bhands?\b|\bthumbs?\b|\bfingers?\b|\bgrip\b|\bhandgelenk|\bhand\b|\bdaumen|\bfinger/, ['wrist']],
  [/(?<!upper |fore)\barms?\b|\barm(?:e|en)\b/, arm],
  [/\bhips?\b|\bhuefte|\bhueft(?!heb|beug)/, ['hip']],
  [/\bhip flexors?\b|\bhueftbeuger/, ['hip', 'groin']],
  [/\bgroin|\badductors?\b|\binner thighs?\b|\bleisten?\b|\badduktor|\binnere?r? oberschenkel/, ['groin']],
  [/\bglutes?\b|\bbuttocks?\b|\bbum\b|\bpiriformis|\bgesaess|\bpo\b|\bpobacke/, ['glutes', 'hip']],
  [/\bquads?\b|\bquadriceps|\bthighs?\b|\bquadrizeps|\boberschenkel/, ['thigh']],
  [
    /\bhamstrings?\b|\bhammies?\b|\bback of (?:my|the) (?:thigh|leg)|\bbeinbeuger|\bhinterer? oberschenkel|\bkniesehne/,
    ['hamstring'],
  ],
  [/\bknees?\b|\bkneecaps?\b|\bpatella|\bmeniscus|\bknie(?!beug|sehne)|\bpatella|\bmeniskus/, ['knee']],
  [/\bcalf\b|\bcalves\b|\bwaden?\b/, ['calf']],
  [/\bshins?\b|\bschienbein/, ['calf', 'knee']],
  [
    /\bankles?\b|\bachilles|\bfoot\b|\bfeet\b|\bheels?\b|\btoes?\b|\barch\b|\bknoechel|\bsprunggelenk|\bachilles|\bfuss\b|\bfuesse|\bferse|\bzeh/,
    ['ankle'],
  ],
  [/\bachilles/, ['calf']],
  [/\blegs?\b|\bbein\b|\bbeine?n?\b/, leg],
  [backItself, back],
];

/** Names of lifts and of training that hold a word of the body without meaning it: "back squat", "chest press". */
const lifts =
  /\b(?:front |back |overhead |goblet |box )?squats?\b|\b(?:leg|chest|shoulder|calf|knee|hip|back|wrist|neck|arm|hamstring|glute|ankle)[- ](?:press(?:es)?|raises?|extensions?|curls?|thrusts?|bridges?|hinges?|fly|flys|flies|rows?|lifts?|lowering|day|session|workout|machine|supported)\b|\b(?:push|heel|upper)[- ]?day\b|\b(?:knie|hueft|bein|brust|waden|schulter|ruecken)(?:beugen?|heben|heber|strecker|strecken|beuger(?:maschine)?|presse|druecken|training|tag)\b/g;

/** The parts of the body that words name, without the names of lifts; `words` in small letters, umlauts written out. */
export function areasNamed(words: string): ReadonlySet<BodyArea> {
  const meant = words.replace(lifts, ' ');
  return new Set(named.flatMap(([pattern, areas]) => (pattern.test(meant) ? areas : [])));
}

const lowerChain: readonly BodyArea[] = ['lowerBack', 'glutes', 'groin', ...leg];
const upperChain: readonly BodyArea[] = ['neck', 'upperBack', ...arm];

/** The areas along a limb up to the spine: signs of a nerve in one may come from any of them. */
export function alongTheNerve(areas: ReadonlySet<BodyArea>): ReadonlySet<BodyArea> {
  const chains = [lowerChain, upperChain].filter((chain) => chain.some((area) => areas.has(area)));
  return new Set([...areas, ...chains.flat()]);
}

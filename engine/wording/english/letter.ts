/** As a coach writes to a trainee. Prepared values: {where} says where something was seen, {date} and scores are written out. */
const coach = {
  title: 'Letter to {trainee}, {date}',
  greeting: 'Hello {trainee},',
  opening: 'I went through your session of {date}: {exercises}, with {clips} and {reps} on film.',
  openingUnmarked: 'I went through your session of {date}: {exercises}, with {clips} on film.',
  openingWithoutFilm: 'I went through your session of {date}. No film came with it, so there is little to judge.',
  clipCount: '{count, plural, one {# clip} other {# clips}}',
  repCount: '{count, plural, one {# rep} other {# reps}}',
  graded: 'Overall grade: {mark} ({score} of 100).',
  provisional: 'Overall grade for now: {mark} ({score} of 100).',
  noGrade: 'There is no overall grade this time.',
  parts: 'Technique stands at {technique} and the programme at {programme}.',
  partsByCost:
    'Technique stands at {technique}, and the programme costs {cost, plural, =0 {nothing} one {# point} other {# points}}.',
  cappedByStop: 'A stop remark holds it there: with one, no session is graded above {cap}.',
  largestGain:
    'The biggest gain is in “{fault}” ({exercise}): without it, the session would stand {points} {count, plural, one {point} other {points}} higher.',
  largestFinding:
    'The biggest gain is in the programme: {what} Without that, the session would stand {points} {count, plural, one {point} other {points}} higher.',
  onlyProgrammeCosts: 'Nothing on film cost you a point; what is missing lies in the programme.',
  nothingCosts: 'Nothing on film cost you a point.',
  byHand: 'I set this grade by hand. {reason} By the remarks alone it would be {computed}.',
  byHandNone: 'I set this grade by hand. {reason} By the remarks alone there would be none.',
  provisionalBecause:
    'The grade is provisional, because part of what the film can show was not looked at: {entries}. Looked at in full, the session would lie between {low} and {high}.',
  provisionalEntry: '{exercise} ({percent} looked at)',
  rangeSingle: 'The grade is provisional, because part of what the film can show was not looked at: {entries}.',

  stopTitle: 'Before your next set: stop',
  stopSeen: '{where}: “{fault}” was unsafe.',
  stopAdvice: 'Leave this lift out until it is put right, start again light, and have somebody with you.',
  painTitle: 'About the pain you mentioned',
  painQuote: 'You wrote: “{words}”',
  painDefer:
    'Film can’t tell what that is, so I don’t judge it, and the grade leaves it out. Please ask a licensed clinician about it.',

  keepTitle: 'What to keep',
  keepLabel: '{criterion}.',
  keepFlag: '{where}: {what}',
  keepTicked: '{exercise}: {criteria} held up wherever I looked.',
  keepTickedAll: '{exercise}: {criteria} held up on {count, plural, one {the one rep} other {all # reps}}.',

  sinceTitle: 'Since last time',
  sinceGone: '{fault} ({exercise}): gone. It was on {before}.',
  sinceBack: '{fault} ({exercise}): back, on {now}.',
  sinceBetter: '{fault} ({exercise}): better. {now}, after {before}.',
  sinceWorse: '{fault} ({exercise}): more than last time. {now}, after {before}.',
  sinceReps: '{reps} of {of}',

  changeTitle: 'What to change',
  changeStop: 'This comes before everything else:',
  changeIntro:
    '{count, plural, one {One thing to work on, and only this one:} other {Work on these {count, plural, =2 {two} =3 {three} other {#}} things, the most important first:}}',
  changeNothing: 'I have nothing to change on this film. Do the same again.',
  changeNothingYet: 'I have nothing to change in what I looked at so far.',
  changeNothingOften: 'Nothing showed in enough reps to change it now. Do the same again.',
  changeNothingPain:
    'The film shows nothing to change. Whether and how you go on with it depends on the pain: see above before you repeat it.',
  changeNothingSeen: 'Too little was looked at to say what to change.',
  changeLater: 'The sheet lists {count, plural, one {# more remark. It} other {# more remarks. They}} can wait.',
  changeOnlyLater: 'The sheet lists {count, plural, one {# remark. It} other {# remarks. They}} can wait.',
  priority: '{number}. {fault} ({exercise})',
  priorityAcross: '{number}. {fault}',
  seenLabel: 'What I saw.',
  seen: '{where}: {what}',
  seenPlain: '{where}: marked “{weight}”.',
  stillAlt: 'Still from the film: {where}. {what}',
  whyLabel: 'Why it matters.',
  why: '{why} ({source}).',
  cueLabel: 'Your cue.',
  cue: '“{cue}”',
  cueIsNew: 'This is a new cue: the one before has had three letters.',
  choiceOrder: 'Your choice: begin with the first or the second. One at a time is enough.',
  choiceCue: 'Your choice: keep that cue, or use “{other}”. Take whichever you feel sooner.',
  drillLabel: 'Practise.',
  proofLabel: 'How we’ll know.',
  proofPlain: 'The next clip needs no remark on {criterion}.',

  everyRep: '{count, plural, one {the one rep} other {all # reps}}',
  someReps: '{count, plural, one {rep} other {reps}} {reps} of {of}',
  wholeSet: 'the whole set',
  repSpan: '{from} to {to}',
  sighting: '{exercise}, {reps}',
  sightingInClip: '{exercise}, {clip}, {reps}',
  sightingAt: '{sighting} ({times})',
  moreMoments: '{count, plural, one {# more moment} other {# more moments}}',
  moreClips: '{count, plural, one {# more clip} other {# more clips}}',

  exercisesTitle: 'Exercise by exercise',
  exercisesCaption: 'What was done, what is on film, and its grade',
  columnExercise: 'Exercise',
  columnWork: 'Sets × reps × load',
  columnGrade: 'Grade',
  columnFilm: 'Film',
  gradeCell: '{mark} ({score})',
  gradeCellProvisional: '{mark} ({score}), provisional',
  gradeCellNone: 'No grade',
  entryNone: '{exercise} has no grade: {reason}',
  entryCapped: '{exercise} is held down by its stop remark: with one, no exercise is graded above {cap}.',
  entryByHand: '{exercise}: I set this grade by hand. {reason} By the remarks alone it would be {computed}.',
  entryByHandNone: '{exercise}: I set this grade by hand. {reason} By the remarks alone there would be none.',
  noFilm: 'none',

  programmeTitle: 'The programme',

  filmTitle: 'What to film next',
  filmNone: '{exercise}: film the hardest set {view}, from the set-up through at least three reps.',
  filmOtherView: '{exercise}: add a clip {view}. The film I had can’t show {criteria}.',
  filmNoView: '{exercise}: no usual camera position shows {criteria}; show me in person or describe it.',
  filmUnseen: '{exercise}: I did not judge {criteria} yet. The next clip {view} lets me.',
  filmFirst: 'Film the hardest set of each exercise, from the set-up through at least three reps.',
  filmAfterStop:
    '{exercise}: once it is put right, film the first light set {view}, set-up included, and send it before you add load.',
  filmAgain:
    'Film the hardest set again from the same side and distance, so that the two clips can be laid side by side.',
  filmAfterPain: 'When the pain has settled, film an easy set from the same side and distance first.',
  view: '{view, select, side {from the side} front {from the front} rear {from behind} other {from a front corner}}',

  cautionsTitle: 'Cautions',
  signOff: 'Train well. Write back if anything here is unclear, and send the next clip when you have it.',
  basis:
    'Coaching opinion from video; not medical advice. Session of {date}; clips used: {clips}. Graded with {rubric}, version {version}.',
  basisWithoutFilm:
    'Coaching opinion from video; not medical advice. Session of {date}; no clips were used. Graded with {rubric}, version {version}.',

  quoted: '“{words}”',
  weight: '{weight, select, keep {keep} prefer {prefer} adjust {adjust} correct {correct} other {stop}}',
};

export type LetterMessageId = keyof typeof coach;
/** What a letter says, by id. */
export type LetterMessages = Readonly<Record<LetterMessageId, string>>;

const self: LetterMessages = {
  ...coach,
  title: 'Review of my training, {date}',
  greeting: 'Notes to myself, {trainee}:',
  opening: 'I went through my session of {date}: {exercises}, with {clips} and {reps} on film.',
  openingUnmarked: 'I went through my session of {date}: {exercises}, with {clips} on film.',
  openingWithoutFilm: 'I went through my session of {date}. There is no film of it, so there is little to judge.',
  onlyProgrammeCosts: 'Nothing on film cost a point; what is missing lies in the programme.',
  nothingCosts: 'Nothing on film cost a point.',
  stopTitle: 'Before my next set: stop',
  stopAdvice: 'I leave this lift out until it is put right, start again light, and have somebody with me.',
  painTitle: 'About the pain I noted',
  painQuote: 'I wrote: “{words}”',
  painDefer:
    'Film can’t tell what that is, so this review doesn’t judge it, and the grade leaves it out. I ask a licensed clinician about it.',
  changeNothing: 'There is nothing to change on this film. I do the same again.',
  changeNothingPain:
    'The film shows nothing to change. Whether and how I go on with it depends on the pain: see above before I repeat it.',
  changeNothingYet: 'There is nothing to change in what I looked at so far.',
  changeNothingOften: 'Nothing showed in enough reps to change it now. I do the same again.',
  cueLabel: 'My cue.',
  choiceOrder: 'I begin with the first or the second, one at a time.',
  choiceCue: 'I keep that cue, or use “{other}”, whichever I feel sooner.',
  proofLabel: 'How I’ll know.',
  filmOtherView: '{exercise}: add a clip {view}. The film I have can’t show {criteria}.',
  filmNoView: '{exercise}: no usual camera position shows {criteria}; ask somebody to watch it.',
  filmAfterStop:
    '{exercise}: once it is put right, film the first light set {view}, set-up included, and look at it before adding load.',
  signOff: 'Next: practise this, film it, look again.',
};

const warm: Partial<LetterMessages> = {
  greeting: 'Hello {trainee}, and thank you for sending this in,',
  opening: 'I went through your session of {date} with care: {exercises}, with {clips} and {reps} on film.',
  openingUnmarked: 'I went through your session of {date} with care: {exercises}, with {clips} on film.',
  changeIntro:
    '{count, plural, one {There is one thing I would love you to work on, and only this one:} other {There are {count, plural, =2 {two} =3 {three} other {#}} things I would love you to work on, the most important first:}}',
  changeNothing: 'There is nothing I would change on this film. Enjoy it, and do the same again.',
  signOff: 'You put real work into this. Write back whenever something is unclear; I look forward to the next clip.',
};

const direct: Partial<LetterMessages> = {
  greeting: '{trainee},',
  opening: 'Session of {date}: {exercises}; {clips}, {reps}.',
  openingUnmarked: 'Session of {date}: {exercises}; {clips}.',
  changeIntro:
    '{count, plural, one {Change one thing:} other {Change {count, plural, =2 {two} =3 {three} other {#}} things, the most important first:}}',
  changeNothing: 'Nothing to change. Repeat it.',
  changeNothingYet: 'Nothing to change in what was looked at.',
  changeLater: '{count, plural, one {# more remark is} other {# more remarks are}} on the sheet.',
  signOff: 'Send the next clip when you have it.',
};

/** One language of the letter. A tone says some things otherwise; plain is the coach's wording itself. */
export type LetterWording = {
  readonly coach: LetterMessages;
  /** The athlete speaking to themselves. */
  readonly self: LetterMessages;
  readonly tones: Readonly<Record<'warm' | 'direct', Partial<LetterMessages>>>;
};

/** The letter in English, as a coach says it, the same in other tones, and as the athlete says it. */
export const letter: LetterWording = { coach, self, tones: { warm, direct } };

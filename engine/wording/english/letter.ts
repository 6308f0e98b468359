/** As a coach writes to a trainee. Prepared values: {where} says where something was seen, {date} and scores are written out. */
const coach = {
  title: 'Letter to {trainee}, {date}',
  greeting: 'Hello {trainee},',
  opening: 'I went through your session of {date}: {exercises}, with {film} on film.',
  openingWithoutFilm: 'I went through your session of {date}. No film came with it, so there is little to judge.',
  clipCount: '{count, plural, one {# clip} other {# clips}}',
  repCount: '{count, plural, one {# rep} other {# reps}}',
  holdCount: '{count, plural, one {# hold} other {# holds}}',
  graded: 'Overall grade: {mark} ({score} of 100).',
  provisional: 'Overall grade for now: {mark} ({score} of 100).',
  noGrade: 'There is no overall grade this time.',
  parts: 'Technique scores {technique} and the programme {programme}.',
  partsByCost:
    'Technique scores {technique}, and the programme costs {cost, plural, =0 {nothing} one {# point} other {# points}}.',
  programmeCostsNothing: 'No points were lost in the programme.',
  stopDecides: 'Something unsafe was seen, and that decides the grade until it is fixed.',
  urgentDecides: 'Points come later: first take load off {lifts}. See below for how.',
  largestGain:
    'The biggest gain is in “{fault}”{places, plural, =0 {} other { ({exercise})}}: without it, the session would score {points} {count, plural, one {point} other {points}} more.',
  largestFinding:
    'The biggest gain is in the programme, see below: with its costliest point fixed, the session would score {points} {count, plural, one {point} other {points}} more.',
  onlyProgrammeCosts: 'Nothing on film cost you a point; the points were lost in the programme.',
  nothingCosts: 'Nothing on film cost you a point.',
  nothingCostsAtAll: 'Nothing cost you a point, neither on film nor in the programme.',
  byHand: 'I set this grade by hand. {reason} From the notes alone it would be {computed}.',
  byHandNone: 'I set this grade by hand. {reason} From the notes alone there would be none.',
  provisionalBecause:
    'The grade is provisional, because part of what the film can show was not looked at: {entries}. With everything looked at, the session would lie between {low} and {high}.',
  provisionalEntry: '{exercise} ({percent} looked at)',
  rangeSingle: 'The grade is provisional, because part of what the film can show was not looked at: {entries}.',

  stopTitle: 'Before your next set: stop',
  stopSeen: '{where}: “{fault}” was unsafe.',
  stopSeenPlain: '{where}: unsafe ({criterion}).',
  stopAdvice: 'Leave this lift out until it is put right, start again light, and have somebody with you.',
  stopAfterPain: 'This has to be put right too, but the pain comes first. Leave out what was unsafe until then.',
  stopAdviceMany:
    'The film shows things to put right before anything else. Leave these lifts out, or do them with a load that you can stop at any height, until they are put right.',
  painTitle: 'First, the pain you noted',
  painQuote: 'You wrote: “{words}”',
  painEmergency:
    'What you describe can need help at once. Call the emergency services if it is there now or comes back, and don’t train before a clinician has cleared it.',
  painSoon: 'What you describe should be looked at soon, before that part is loaded again.',
  painStop: 'Stop {lifts} for now: no sets, no practice and no new clip until a licensed clinician has looked at it.',
  painSettle:
    'Leave out {lifts} until it has settled, at least until the next morning; then start easier than before. Until then there is nothing to practise, add or film there. Stop if it comes back, gets worse or brings numbness.',
  painMild:
    'It is mild. If a clinician knows this pain and has cleared it, you may carry on with {lifts}, lighter rather than heavier, as long as it does not get worse. If not, leave them out until it has settled. Until then there is nothing to practise, add or film there.',
  painEveryLift: 'the lifts of this session',
  painOver:
    'It was slight and has gone, so carry on, lighter rather than heavier. Stop if it comes back or gets worse.',
  painElsewhere:
    'None of these lifts should load that part. Leave out any lift where you feel it, and tell me which one.',
  painDefer:
    'Film can’t show what this pain is, so I don’t judge it, and the grade leaves it out. Please ask a licensed clinician about it.',

  keepTitle: 'What to keep',
  keepLabel: '{criterion}.',
  keepSeen: '{where}: {what}',
  keepHeld: '{where}: the same from the first second to the last.',
  keepStill:
    '{where}: still took {seconds, plural, =1 {one second} =2 {two seconds} =3 {three seconds} =4 {four seconds} one {# second} other {# seconds}}{more, plural, =0 {} other { or more}} down.',
  keepLowering:
    '{where}: took {seconds, plural, =1 {one second} =2 {two seconds} =3 {three seconds} =4 {four seconds} one {# second} other {# seconds}}{more, plural, =0 {} other { or more}} down, and no rep was quicker.',

  sinceTitle: 'Since last time',
  sinceName: '{fault} ({exercise})',
  sinceGone: '{name}: gone. Last time it was on {before}.',
  sinceSame: '{name}: unchanged. Now {now}, last time {before}.',
  sinceBack: '{name}: back again, on {now}.',
  sinceBetter: '{name}: better. Now {now}, last time {before}.',
  sinceWorse: '{name}: worse. Now {now}, last time {before}.',
  sinceReps: '{reps} of {of}',
  sinceRepsLooked: '{reps} of the {of} that were looked at',
  sinceSeverity: 'It was marked “{before}” and is now “{now}”.',

  changeTitle: 'What to change',
  changeStop: 'This comes before everything else:',
  changeIntro:
    '{count, plural, one {One thing to work on, and only this one:} other {{count, plural, =2 {Two} =3 {Three} other {#}} things to work on, one at a time:}}',
  changeInOrder: '{count, plural, =2 {Two} =3 {Three} other {#}} things to work on, in this order:',
  changeNothing: 'I see nothing to change. Do the same again.',
  changeNothingYet: 'In what I have looked at so far I see nothing to change.',
  changeNothingOften: 'Nothing came up often enough to change it now. Do the same again.',
  changeInPlan: 'Your technique needs no change now. What I would change is in the programme, below.',
  changeNothingPain: 'I see nothing to change. What comes next depends on the pain, see above.',
  changeWaits:
    'What I noted on {lifts} is on the sheet, for {step, select, stop {when a licensed clinician has cleared it} other {when the pain has settled}}. There is nothing to practise there now.',
  changeStopWaits: 'What has to be put right is above. The pain comes first.',
  changeNothingSeen: 'I have not judged enough yet to say what to change.',
  changeLater: 'The sheet has {count, plural, one {# more note. It} other {# more notes. They}} can wait.',
  changeOnlyLater: 'The sheet has {count, plural, one {# note. It} other {# notes. They}} can wait.',
  changeOnSheet:
    'The sheet has {count, plural, one {# {more, plural, =0 {note} other {more note}}} other {# {more, plural, =0 {notes} other {more notes}}}}.',
  priority: '{number}. {fault}{places, plural, =0 {} other { ({exercise})}}',
  loadLabel: 'Take load off first.',
  loadFirst:
    'Next time, start {lifts} {unsafe, select, yes {far lighter, with a load that you can stop at any height and at which} other {a tenth to a fifth lighter: with a load at which}} your back keeps its set-up shape on every rep. Add weight back in small steps, and only as long as the back holds.',
  seenLabel: 'What I saw.',
  seen: '{where}: {what}',
  severityKey:
    'What the marks mean: “prefer” is fine tuning; “adjust” works, but costs something; “correct” defeats the purpose; “stop” is unsafe.',
  seenPlain: '{where}: marked “{severity}”.',
  stillAlt: 'Still from the film: {where}. {what}',
  whyLabel: 'Why it matters.',
  cueLabel: 'Your cue.',
  cue: '“{cue}”',
  cueIsNew: 'This is a new cue: you have had the last one in three letters.',
  choiceInOrder: 'Start with the first. Go on to the next once the first one holds.',
  choiceOrder:
    'Your choice: start with {count, plural, =2 {the first or the second} other {any of them}}. One at a time is enough.',
  choiceCue: 'Your choice: keep that cue, or use “{other}”. Go with whichever works better for you.',
  drillLabel: 'Practise.',
  proofLabel: 'How we’ll know.',
  proofPlain: 'The next clip needs no note on {criterion}.',

  everyRep:
    '{holds, plural, =0 {{count, plural, one {the one rep} other {all # reps}}} other {{count, plural, one {the one hold} other {all # holds}}}}',
  countedReps: '{reps} of {of} {holds, plural, =0 {reps} other {holds}}',
  wholeSets: '{count, plural, one {one whole set} other {# whole sets}}',
  everyRepOf: 'every rep of {places}',
  someReps:
    '{holds, plural, =0 {{count, plural, one {rep} other {reps}}} other {{count, plural, one {hold} other {holds}}}} {reps} of {of}',
  wholeSet: 'the whole set',
  repSpan: '{from} to {to}',
  momentOfRep: '{times}, {reps}',
  momentsOfReps: '{reps} ({times})',
  alsoInClip: ', also in {clip} ({times})',
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
  entryNotJudged: '{exercise} has no grade: I have not judged any of it yet.',
  entryCapped: '{exercise}: the grade stays capped until what was unsafe is fixed.',
  entryByHand: '{exercise}: I set this grade by hand. {reason} From the notes alone it would be {computed}.',
  entryByHandNone: '{exercise}: I set this grade by hand. {reason} From the notes alone there would be none.',
  noFilm: 'none',

  programmeTitle: 'The programme',
  programmeWaits:
    'Advice on {lifts} waits until {step, select, stop {a licensed clinician has cleared it} other {the pain has settled}}.',

  filmTitle: 'What to film next',
  filmNone:
    'film {effort, select, hardest {the hardest set} other {an easy set}} {view}, from the set-up through at least three reps.{effort, select, hardest {} other { Stop it with three good reps left.}}',
  filmOtherView: 'add a clip {view}. The film I had can’t show {criteria}.',
  filmNoView: 'none of the usual camera positions shows {criteria}; show me in person or describe it.',
  filmUnseen: 'the film I had shows more than I have judged. Still open: {criteria}.',
  filmNotLookedAt: 'I have not looked at these clips yet.',
  filmOnlyNotes:
    'so far there are only notes on the film, and they are on the sheet. I have not judged anything yet; that needs no new clip.',
  filmFirst:
    'Film {effort, select, hardest {the hardest set} other {an easy set}} of each exercise, from the set-up through at least three reps.{effort, select, hardest {} other { Stop it with three good reps left.}}',
  filmAfterStop:
    'once it is put right, film the first light set {view}, set-up included, and send it before you add load.',
  filmLighter: 'film the first set with less load {view}, set-up included.',
  filmAgain:
    '{effort, select, hardest {Film the hardest set{lifts, select, one {} other { of each exercise}} again from the same side and distance, so that the two clips can be compared.} other {Film {lifts, select, one {the same lift} other {each exercise}} again from the same side and distance, so that the two clips can be compared: an easy set, stopped with three good reps left.}}',
  filmAgainOf:
    '{effort, select, hardest {Film the hardest set of {lifts} again from the same side and distance, so that the two clips can be compared.} other {Film {lifts} again from the same side and distance, so that the two clips can be compared: easy sets, stopped with three good reps left.}}',
  filmAfterPain: 'When the pain has settled, film an easy set of {lifts} first, from the same side and distance.',
  filmAfterClinician: 'No new clip of {lifts} before a licensed clinician has cleared it.',
  filmNothingYet: 'No new clip before a licensed clinician has cleared it.',
  filmOnceSettled: 'When the pain has settled, film an easy set first.',
  filmWithoutPain: 'Film no lift in which you feel the pain.',
  view: '{view, select, side {from the side} front {from the front} rear {from behind} other {from a front corner}}',

  cautionsTitle: 'Cautions',
  signOff: 'Train well. Write back if anything here is unclear, and send the next clip when you have it.',
  signOffSame: 'Train well. Write back if anything here is unclear, and send the next clip when you have it.',
  signOffPain: 'Look after the pain first, and let me know how it goes.',
  signOffStop: 'First put right what was unsafe. Write back if anything here is unclear.',
  basis:
    'Coaching opinion from video; not medical advice. Session of {date}; clips used: {clips}. Graded with {rubric}, version {version}.',
  basisWithoutFilm:
    'Coaching opinion from video; not medical advice. Session of {date}; no clips were used. Graded with {rubric}, version {version}.',

  quoted: '“{words}”',
  severity: '{severity, select, keep {keep} prefer {prefer} adjust {adjust} correct {correct} other {stop}}',
};

export type LetterMessageId = keyof typeof coach;
/** What a letter says, by id. */
export type LetterMessages = Readonly<Record<LetterMessageId, string>>;

const self: LetterMessages = {
  ...coach,
  title: 'Review of my training, {date}',
  greeting: 'Notes to myself, {trainee}:',
  opening: 'I went through my session of {date}: {exercises}, with {film} on film.',
  openingWithoutFilm: 'I went through my session of {date}. There is no film of it, so there is little to judge.',
  urgentDecides: 'Never mind the points yet: I take load off first on {lifts}. How to do it is below.',
  onlyProgrammeCosts: 'Nothing on film cost a point; the points were lost in the programme.',
  nothingCosts: 'Nothing on film cost a point.',
  nothingCostsAtAll: 'Nothing cost a point, neither on film nor in the programme.',
  stopTitle: 'Before my next set: stop',
  stopAdvice: 'I leave this lift out until it is put right, start again light, and have somebody with me.',
  stopAfterPain: 'This has to be put right too, but the pain comes first. I leave out what was unsafe until then.',
  stopAdviceMany:
    'The film shows things to put right before anything else. I leave these lifts out, or do them with a load that I can stop at any height, until they are put right.',
  painTitle: 'First, the pain I noted',
  painQuote: 'I wrote: “{words}”',
  painEmergency:
    'What I describe can need help at once. I call the emergency services if it is there now or comes back, and don’t train before a clinician has cleared it.',
  painSoon: 'What I describe should be looked at soon, before that part is loaded again.',
  painStop: 'I stop {lifts} for now: no sets, no practice and no new clip until a licensed clinician has looked at it.',
  painSettle:
    'I leave out {lifts} until it has settled, at least until the next morning; then start easier than before. Until then there is nothing to practise, add or film there. I stop if it comes back, gets worse or brings numbness.',
  painMild:
    'It is mild. If a clinician knows this pain and has cleared it, I may carry on with {lifts}, lighter rather than heavier, as long as it does not get worse. If not, I leave them out until it has settled. Until then there is nothing to practise, add or film there.',
  painOver:
    'It was slight and has gone, so I carry on, lighter rather than heavier. I stop if it comes back or gets worse.',
  painElsewhere: 'None of these lifts should load that part. I leave out any lift where I feel it.',
  painDefer:
    'Film can’t show what this pain is, so this review doesn’t judge it, and the grade leaves it out. I ask a licensed clinician about it.',
  changeNothing: 'I see nothing to change. I do the same again.',
  changeNothingYet: 'In what I have looked at so far I see nothing to change.',
  changeNothingOften: 'Nothing came up often enough to change it now. I do the same again.',
  cueLabel: 'My cue.',
  cueIsNew: 'This is a new cue: I have had the last one in three reviews.',
  changeInPlan: 'My technique needs no change now. What I would change is in the programme, below.',
  choiceInOrder: 'I start with the first and go on to the next once the first one holds.',
  choiceOrder: 'I start with {count, plural, =2 {the first or the second} other {any of them}}, one at a time.',
  loadFirst:
    'Next time I start {lifts} {unsafe, select, yes {far lighter, with a load that I can stop at any height and at which} other {a tenth to a fifth lighter: with a load at which}} my back keeps its set-up shape on every rep. I add weight back in small steps, and only as long as the back holds.',
  choiceCue: 'I keep that cue, or use “{other}”, whichever works better for me.',
  proofLabel: 'How I’ll know.',
  filmWithoutPain: 'I film no lift in which I feel the pain.',
  filmUnseen: 'the film I have shows more than I have judged. Still open: {criteria}.',
  filmOtherView: 'add a clip {view}. The film I have can’t show {criteria}.',
  filmNoView: 'none of the usual camera positions shows {criteria}; ask somebody to watch it.',
  filmAfterStop:
    'once it is put right, film the first light set {view}, set-up included, and look at it before adding load.',
  signOff: 'Next: practise this, film it, look again.',
  signOffSame: 'Next: train, film it, look again.',
  signOffPain: 'Next: look after the pain first.',
  signOffStop: 'Next: put right what was unsafe.',
};

const warm: Partial<LetterMessages> = {
  greeting: 'Hello {trainee}, and thank you for sending this in,',
  opening: 'I have been through your session of {date} with care: {exercises}, with {film} on film.',
  changeIntro:
    '{count, plural, one {There is just one thing I would love you to work on:} other {There are {count, plural, =2 {two} =3 {three} other {#}} things I would love you to work on, one at a time:}}',
  changeInOrder:
    'There are {count, plural, =2 {two} =3 {three} other {#}} things I would love you to work on, in this order:',
  changeNothing: 'There is nothing I would change here. Enjoy it, and do the same again.',
  signOff: 'Write back whenever something is unclear; I look forward to the next clip.',
  signOffSame: 'Write back whenever something is unclear; I look forward to the next clip.',
  signOffPain: 'Look after yourself first, and let me know how it goes. The training can wait.',
  signOffStop: 'First put right what was unsafe; there is no hurry. Write back whenever something is unclear.',
};

const direct: Partial<LetterMessages> = {
  greeting: '{trainee},',
  opening: 'Session of {date}: {exercises}; {film}.',
  changeIntro:
    '{count, plural, one {Change one thing:} other {Change {count, plural, =2 {two} =3 {three} other {#}} things, one at a time:}}',
  changeInOrder: 'Change {count, plural, =2 {two} =3 {three} other {#}} things, in this order:',
  changeNothing: 'Nothing to change. Repeat it.',
  changeNothingYet: 'Nothing to change in what I have looked at.',
  changeLater: '{count, plural, one {# more note is} other {# more notes are}} on the sheet.',
  signOff: 'Send the next clip when you have it.',
  signOffSame: 'Send the next clip when you have it.',
  signOffStop: 'First put right what was unsafe.',
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

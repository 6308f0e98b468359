import type { FindingMessageId } from '../../programme/finding.ts';

/**
 * The texts of one finding. A name of an exercise stands in them as it begins a sentence ({exercise}) or inside one
 * ({exerciseInside}); `item` is one part of the list {items}, `step` one of the steps that stand below the suggestion, each
 * by itself.
 */
export type FindingPatterns = {
  readonly what: string;
  readonly why: string;
  readonly suggestion: string;
  readonly source: string;
  readonly item?: string;
  readonly step?: string;
};

const longLengths = 'In trials so far, work in the stretch has built muscle at least as well, and sometimes better.';

const reps =
  '{fewest, plural, one {# rep} other {# reps}}{isSpan, select, yes { to {most, plural, one {# rep} other {# reps}}} other {}}';

const harder =
  '{way, select, load {Choose a load that ends a set between {from} and {to} reps.} handsAndFeet {Lower the hands, raise the feet or slow the way down until a set ends between {from} and {to} reps.} other {Slow the way down and stop in the stretch, or take a harder variation, until a set ends between {from} and {to} reps.}}';

const thenOthers = '{more, plural, =0 {} other { Next best, in order: the {othersInside}.}}';

/** What the plan of a session could do better. */
export const programme = {
  repsFewForGrowth: {
    what: `{exercises} {count, plural, one {is} other {are}} planned at ${reps} a set, and the goal is growth.`,
    why: 'Muscle grows about equally well over a wide span of reps when sets come near failure; with fewer, the sets are heavy and give little work.',
    suggestion:
      '{way, select, load {Choose a load that ends a set between {from} and {to} reps.} handsAndFeet {Raise the hands or lower the feet until a set ends between {from} and {to} reps.} other {Take an easier variation or some help until a set ends between {from} and {to} reps.}}',
    source: 'span: common practice; loads compared: Schoenfeld et al. 2017, J Strength Cond Res 31:3508',
  },
  repsManyForGrowth: {
    what: `{exercises} {count, plural, one {is} other {are}} planned at ${reps} a set, and the goal is growth.`,
    why: 'Muscle grows about equally well over a wide span of reps when sets come near failure; with more, the sets get long and tiring for what they give.',
    suggestion: harder,
    source: 'span: common practice; loads compared: Schoenfeld et al. 2017, J Strength Cond Res 31:3508',
  },
  repsManyForStrength: {
    what: `{exercises} {count, plural, one {is} other {are}} planned at ${reps} a set, and the goal is strength.`,
    why: 'Strength in a lift depends most on the load, and heavy loads mean few reps.',
    suggestion: harder,
    source: 'Schoenfeld et al. 2017, J Strength Cond Res 31:3508',
  },
  effort: {
    what: '{exercises} {count, plural, one {is} other {are}} planned to end with {fewest, number, ::.##}{isSpan, select, yes { to {most, number, ::.##}} other {}} reps in reserve.',
    why: 'For growth, sets that end nearer to failure tend to give a little more.',
    suggestion:
      '{way, select, load {Add load or reps} handsAndFeet {Add reps, lower the hands or raise the feet} other {Add reps or slow the way down}} until about {enough} are left, as long as technique holds.',
    source: 'Refalo et al. 2023, Sports Med 53:649',
  },
  order: {
    what: '{earlier} {earlierCount, plural, one {comes} other {come}} before the {laterInside}, and they work the same muscles: {muscles}.',
    why: 'What is trained first gains most in strength; the bigger lift then starts with tired muscles.',
    suggestion:
      'Do the {laterInside} first, unless the {earlierInside} {earlierCount, plural, one {is} other {are}} what matters most.',
    source: 'Nunes et al. 2021, Eur J Sport Sci 21:149; Simão et al. 2010, J Sports Sci Med 9:1',
  },
  loadOrder: {
    what: '{earlier} in hard sets of {more, number} reps {earlierCount, plural, one {comes} other {come}} before the heavier {laterInside} in sets of {fewer, number}, and they work the same muscles: {muscles}.',
    why: 'Heavy work needs fresh muscles and a fresh head; tired, you lose load and technique.',
    suggestion:
      'Do the {laterInside} first. If the {earlierInside} {earlierCount, plural, one {is} other {are}} only meant to warm up, stop far from failure.',
    source: 'Nunes et al. 2021, Eur J Sport Sci 21:149; for other goals than strength: common practice',
  },
  setOrder: {
    what: '{exercises}: lighter hard sets come before the heaviest ones, so you do the heaviest ones tired.',
    why: 'The heaviest sets ask the most of your strength and technique, so do them fresh.',
    suggestion:
      'Warm up with sets that end far from failure, do the heaviest set first, then take load off and do more reps.',
    source: 'common practice',
  },
  volume: {
    what: '{sets, number, ::.#} hard sets of this session go to the {muscles}: {exercisesInside}{helped, select, yes {, and sets that only help count half} other {}}.',
    why: 'Each extra set in a session gives less than the one before, and you do the last ones tired: technique goes first.',
    suggestion:
      '{fewer, plural, =0 {} other {Halve them: {items}.}}{out, plural, =0 {} other { Leave out the {leftOutInside} for now.}}{addsBack, select, yes { If soreness is gone and strength is back by the next session, add one set at a time.} other {}}',
    item: '{name} from {from} to {to}',
    source: 'threshold and halving: common practice; falling returns: Pelland et al. 2025, Sports Med',
  },
  volumeOfOne: {
    what: '{exercises} alone has {sets, number, ::.#} hard sets in this session.',
    why: 'Each extra set in a session gives less than the one before, and you do the last ones tired: technique goes first.',
    suggestion:
      'Halve them: {items}.{addsBack, select, yes { If soreness is gone and strength is back by the next session, add one set at a time.} other {}}',
    item: '{name} from {from} to {to}',
    source: 'threshold and halving: common practice; falling returns: Pelland et al. 2025, Sports Med',
  },
  shortenedEndLoad: {
    what: '{exercises} {count, plural, one {is} other {are}} hardest at the shortened end and light in the stretch.',
    why: longLengths,
    suggestion: `{count, plural, one {Add the {betterInside}, or do it instead} other {Swap the {exerciseInside} for the {betterInside}}}.${thenOthers}`,
    source: 'Wolf et al. 2023, Int J Strength Cond 3(1); Maeo et al. 2021, Med Sci Sports Exerc 53:825',
  },
  shortenedEndWarmUp: {
    what: '{exercise} loads the muscles only at the shortened end.',
    why: longLengths,
    suggestion: `Fine as a warm-up; for the work sets, use the {betterInside}.${thenOthers}`,
    source: 'Wolf et al. 2023, Int J Strength Cond 3(1)',
  },
  shortenedEndPause: {
    what: '{exercise} is held for {seconds, plural, one {# second} other {# seconds}} at the shortened end ({shortenedEnd}), and less in the stretch.',
    why: 'Seconds held at the shortened end add little; a slower way down and work in the stretch give more.',
    suggestion: 'Spend them on a slower lowering and a stop in the stretch ({stretchedEnd}).',
    source: 'exchange: common practice; holds compared: Oranchuk et al. 2019, Scand J Med Sci Sports 29:484',
  },
  shortenedEndPauses: {
    what: '{exercises} are held at the shortened end for up to {seconds, plural, one {# second} other {# seconds}}, and less in the stretch.',
    why: 'Seconds held at the shortened end add little; a slower way down and work in the stretch give more.',
    suggestion: 'Spend them on a slower lowering and a stop in the stretch.',
    source: 'exchange: common practice; holds compared: Oranchuk et al. 2019, Scand J Med Sci Sports 29:484',
  },
  curtailedRange: {
    what: '{exercises}: {by} ends the range before the muscles are fully stretched.',
    why: longLengths,
    suggestion: 'Add the {betterInside}, or do it instead, unless the shorter range is there for a reason.',
    source: 'Wolf et al. 2023, Int J Strength Cond 3(1)',
  },
  curtailedSetUp: {
    what: '{exercises}: {by} ends the range before the muscles are fully stretched.',
    why: longLengths,
    suggestion: '{remedy}{others, plural, =0 {} other { Or do the {betterInside} instead.}}',
    source: 'set-up: common practice; range: Wolf et al. 2023, Int J Strength Cond 3(1)',
  },
  ladder: {
    what: '{exercises}: too few clean reps a set so far.',
    why: 'A few grinding reps give you little practice; an easier step with clean sets of five or more builds the strength you need.',
    suggestion: 'Take the first of these steps that suits you.',
    step: '{name}{hasWhy, select, yes {: {why}} other {}}',
    source: 'common practice',
  },
  bandAssisted: {
    what: '{exercises}: a band helps most in the stretch and least where the lift is hardest.',
    why: 'You want the tension in the stretch and the help in the hard part.',
    suggestion: '{steps, plural, one {This suits you better.} other {These suit you better, best first.}}',
    step: '{name}{hasWhy, select, yes {: {why}} other {}}',
    source: 'common practice',
  },
  railBackward: {
    what: '{exercise}: facing this way suits the hips more than the thighs.',
    why: 'A bar that goes backward as it lowers pulls the trunk over, and the back rounds at the bottom.',
    suggestion:
      'For the thighs and an upright back, face the other way, so the bar comes forward as it lowers: the knees may pass the toes, and the heels stay down. Split squats on the rail are affected less.',
    source: 'common practice',
  },
  railFacing: {
    what: '{exercise}: you are facing the wrong way for the thighs and an upright back.',
    why: 'A bar that goes backward as it lowers pulls the trunk over, which explains a back that rounds at the bottom.',
    suggestion:
      'Turn round first, so the bar comes forward as it lowers. The knees may pass the toes, and the heels stay down. Split squats on the rail are affected less.',
    source: 'common practice',
  },
  weeklyVolume: {
    what: 'More than 20 hard sets this week went to the {muscles}.',
    why: 'Beyond about 20 sets a week each set gives less; not nothing, but you have to recover from every one.',
    suggestion: 'Check how recovery goes, and drop the sets you only go through the motions in.',
    source: 'Pelland et al. 2025, Sports Med; meta-analysis of 2022 on trained men (12 to 20 sets)',
  },
  spacing: {
    what: 'Hard sets for the {muscles} came less than two days after the last ones.',
    why: 'After sets near failure most people need one to two days before the same muscles perform as well again.',
    suggestion: 'Leave a day between, or keep more in reserve on one of the two days.',
    source: 'Morán-Navarro et al. 2017, Eur J Appl Physiol 117:2387',
  },
} satisfies Readonly<Record<FindingMessageId, FindingPatterns>>;

import type { FindingMessageId } from '../../programme/finding.ts';
import type { FindingPatterns } from '../english/programme.ts';

const longLengths =
  'Arbeit bei großer Muskellänge hat Muskeln bisher mindestens ebenso gut wachsen lassen, in manchen Studien besser.';

const reps =
  '{isSpan, select, yes {{fewest} bis } other {}}{most, plural, one {# Wiederholung} other {# Wiederholungen}}';

const harder =
  '{way, select, load {Wähl eine Last, mit der ein Satz bei {from} bis {to} Wiederholungen endet.} handsAndFeet {Stell die Hände tiefer oder die Füße höher oder senk dich langsamer ab, bis ein Satz bei {from} bis {to} Wiederholungen endet.} other {Senk dich langsamer ab und halte in der Dehnung an oder nimm eine schwerere Variante, bis ein Satz bei {from} bis {to} Wiederholungen endet.}}';

const thenOthers = '{more, plural, =0 {} other { Danach, der Reihe nach: {othersInside}.}}';

/** What the plan of a session could do better. */
export const programme = {
  repsFewForGrowth: {
    what: `{exercises}: {count, plural, one {} other {jeweils }}${reps} je Satz geplant, und das Ziel ist Muskelaufbau.`,
    why: 'Muskeln wachsen über eine weite Spanne von Wiederholungen etwa gleich, wenn die Sätze nahe ans Versagen gehen; darunter bringt ein Satz wenig Arbeit für seine Anstrengung.',
    suggestion:
      '{way, select, load {Wähl eine Last, mit der ein Satz bei {from} bis {to} Wiederholungen endet.} handsAndFeet {Stell die Hände höher oder die Füße tiefer, bis ein Satz bei {from} bis {to} Wiederholungen endet.} other {Nimm eine leichtere Variante oder etwas Hilfe, bis ein Satz bei {from} bis {to} Wiederholungen endet.}}',
    source: 'Spanne: gängige Praxis; Lasten im Vergleich: Schoenfeld et al. 2017, J Strength Cond Res 31:3508',
  },
  repsManyForGrowth: {
    what: `{exercises}: {count, plural, one {} other {jeweils }}${reps} je Satz geplant, und das Ziel ist Muskelaufbau.`,
    why: 'Muskeln wachsen über eine weite Spanne von Wiederholungen etwa gleich, wenn die Sätze nahe ans Versagen gehen; darüber werden Sätze lang und ermüdend für das, was sie bringen.',
    suggestion: harder,
    source: 'Spanne: gängige Praxis; Lasten im Vergleich: Schoenfeld et al. 2017, J Strength Cond Res 31:3508',
  },
  repsManyForStrength: {
    what: `{exercises}: {count, plural, one {} other {jeweils }}${reps} je Satz geplant, und das Ziel ist Kraft.`,
    why: 'Die Kraft in einer Übung folgt am engsten der Last, und schwere Lasten lassen nur wenige Wiederholungen zu.',
    suggestion: harder,
    source: 'Schoenfeld et al. 2017, J Strength Cond Res 31:3508',
  },
  effort: {
    what: '{exercises}: Geplant ist, {count, plural, one {} other {jeweils }}mit {fewest, number, ::.##}{isSpan, select, yes { bis {most, number, ::.##}} other {}} Wiederholungen in Reserve aufzuhören.',
    why: 'Für den Muskelaufbau bringen Sätze, die näher am Versagen enden, tendenziell etwas mehr.',
    suggestion:
      '{way, select, load {Leg Last oder Wiederholungen zu} handsAndFeet {Mach mehr Wiederholungen oder stell die Hände tiefer oder die Füße höher} other {Mach mehr Wiederholungen oder senk dich langsamer ab}}, bis etwa {enough} in Reserve bleiben, solange die Technik hält.',
    source: 'Refalo et al. 2023, Sports Med 53:649',
  },
  order: {
    what: 'Zuerst {earlier}, dann {laterInside}; {earlierCount, plural, one {beide} other {alle}} trainieren dieselben Muskeln: {muscles}.',
    why: 'Was zuerst trainiert wird, gewinnt am meisten Kraft; die größere Übung beginnt dann mit müden Muskeln.',
    suggestion:
      'Besser zuerst: {laterInside}; es sei denn, {earlierInside} {earlierCount, plural, one {ist} other {sind}} dir wichtiger.',
    source: 'Nunes et al. 2021, Eur J Sport Sci 21:149; Simão et al. 2010, J Sports Sci Med 9:1',
  },
  loadOrder: {
    what: 'Zuerst {earlier} mit harten Sätzen von {more, number} Wiederholungen, dann schwerer mit {fewer, number}: {laterInside}. {earlierCount, plural, one {Beide} other {Alle}} trainieren dieselben Muskeln ({muscles}).',
    why: 'Schwere Arbeit verlangt frische Muskeln und einen frischen Kopf; müde kosten sie Last und Technik.',
    suggestion:
      'Besser zuerst: {laterInside}. {earlierCount, plural, one {Ist} other {Sind}} {earlierInside} nur zum Aufwärmen gedacht, dann hör weit vor dem Versagen auf.',
    source: 'Nunes et al. 2021, Eur J Sport Sci 21:149; bei anderen Zielen als Kraft: gängige Praxis',
  },
  setOrder: {
    what: '{exercises}: Harte Sätze mit weniger Last kommen vor den schwersten, die dann müde gemacht werden.',
    why: 'Die schwersten Sätze verlangen am meisten Kraft und Technik; sie gehören dorthin, wo beides frisch ist.',
    suggestion:
      'Wärm dich mit Sätzen auf, die weit vor dem Versagen enden, mach den schwersten Satz zuerst, nimm dann Last weg und lass die Wiederholungen steigen.',
    source: 'gängige Praxis',
  },
  volume: {
    what: '{sets, number, ::.#} harte Sätze dieser Einheit gehen auf dieselben Muskeln ({muscles}): {exercisesInside}{helped, select, yes {, dazu halb gezählt, was mithilft} other {}}.',
    why: 'Jeder weitere Satz einer Einheit bringt weniger als der davor, und die letzten werden müde gemacht: Die Technik leidet zuerst.',
    suggestion:
      '{fewer, plural, =0 {} other {Halbier sie: {items}.}}{out, plural, =0 {} other { Lass vorerst weg: {leftOutInside}.}} Ist der Muskelkater bis zur nächsten Einheit weg und die Kraft zurück, leg je einen Satz zu.',
    item: '{name} von {from} auf {to}',
    source: 'Schwelle und Halbieren: gängige Praxis; fallender Ertrag: Pelland et al. 2025, Sports Med',
  },
  volumeOfOne: {
    what: '{exercises}: {sets, number, ::.#} harte Sätze allein in dieser Übung.',
    why: 'Jeder weitere Satz einer Einheit bringt weniger als der davor, und die letzten werden müde gemacht: Die Technik leidet zuerst.',
    suggestion:
      'Halbier sie: {items}. Ist der Muskelkater bis zur nächsten Einheit weg und die Kraft zurück, leg je einen Satz zu.',
    item: '{name} von {from} auf {to}',
    source: 'Schwelle und Halbieren: gängige Praxis; fallender Ertrag: Pelland et al. 2025, Sports Med',
  },
  shortEndLoad: {
    what: '{exercises}: {count, plural, one {am schwersten} other {alle am schwersten}}, wo die Muskeln am kürzesten sind, und leicht, wo sie lang sind.',
    why: longLengths,
    suggestion: `Stell diese Übung {count, plural, one {daneben oder an ihre Stelle} other {an die Stelle von {exerciseInside}}}: {betterInside}.${thenOthers}`,
    source: 'Wolf et al. 2023, Int J Strength Cond 3(1); Maeo et al. 2021, Med Sci Sports Exerc 53:825',
  },
  shortEndWarmUp: {
    what: '{exercise}: Die Muskeln werden nur dort belastet, wo sie kurz sind.',
    why: longLengths,
    suggestion: `Zum Aufwärmen ist das in Ordnung; die Arbeit macht besser diese Übung: {betterInside}.${thenOthers}`,
    source: 'Wolf et al. 2023, Int J Strength Cond 3(1)',
  },
  shortEndPause: {
    what: '{exercise}: {seconds, plural, one {# Sekunde} other {# Sekunden}} am kurzen Ende gehalten ({shortEnd}) und weniger in der Dehnung.',
    why: 'Sekunden, die der Muskel kurz gehalten wird, bringen wenig; langsameres Absenken und Arbeit bei großer Muskellänge bringen mehr.',
    suggestion: 'Nutz sie für langsameres Absenken und einen Halt in der Dehnung ({longEnd}).',
    source: 'Tausch: gängige Praxis; Halten im Vergleich: Oranchuk et al. 2019, Scand J Med Sci Sports 29:484',
  },
  shortEndPauses: {
    what: '{exercises}: bis zu {seconds, plural, one {# Sekunde} other {# Sekunden}} am kurzen Ende gehalten und weniger in der Dehnung.',
    why: 'Sekunden, die der Muskel kurz gehalten wird, bringen wenig; langsameres Absenken und Arbeit bei großer Muskellänge bringen mehr.',
    suggestion: 'Nutz sie für langsameres Absenken und einen Halt in der Dehnung.',
    source: 'Tausch: gängige Praxis; Halten im Vergleich: Oranchuk et al. 2019, Scand J Med Sci Sports 29:484',
  },
  curtailedRange: {
    what: '{exercises}: Der Weg endet, bevor die Muskeln am längsten sind; Grund: {by}.',
    why: longLengths,
    suggestion:
      'Stell diese Übung daneben oder an ihre Stelle, falls der kürzere Weg nicht seinen Grund hat: {betterInside}.',
    source: 'Wolf et al. 2023, Int J Strength Cond 3(1)',
  },
  curtailedSetUp: {
    what: '{exercises}: Der Weg endet, bevor die Muskeln am längsten sind; Grund: {by}.',
    why: longLengths,
    suggestion: '{remedy}{others, plural, =0 {} other { Oder nimm stattdessen diese Übung: {betterInside}.}}',
    source: 'Aufbau: gängige Praxis; Weg: Wolf et al. 2023, Int J Strength Cond 3(1)',
  },
  ladder: {
    what: '{exercises}: Noch gelingen kaum genug Wiederholungen.',
    why: 'Wenige mühsame Wiederholungen üben wenig; eine Stufe, die saubere Sätze von fünf und mehr erlaubt, baut die Kraft dafür auf.',
    suggestion: 'Nimm die erste dieser Stufen, die für dich passt: {items}.',
    item: '({place}) {name}{hasWhy, select, yes {: {why}} other {}}',
    source: 'gängige Praxis',
  },
  bandAssisted: {
    what: '{exercises}: Ein Band hilft am meisten in der Dehnung und am wenigsten, wo die Übung am schwersten ist.',
    why: 'In der Dehnung ist die Spannung erwünscht, und an der schweren Stelle fehlt die Hilfe.',
    suggestion: '{count, plural, one {Besser: {items}} other {Besser, der Reihe nach: {items}}}.',
    item: '({place}) {name}{hasWhy, select, yes {: {why}} other {}}',
    source: 'gängige Praxis',
  },
  railBackward: {
    what: '{exercise}: So herum trifft es mehr die Hüfte als die Oberschenkel.',
    why: 'Eine Stange, die beim Absenken nach hinten läuft, zieht den Rumpf nach vorn über, und der Rücken wird unten rund.',
    suggestion:
      'Für die Oberschenkel und einen aufrechten Rücken stell dich andersherum, damit die Stange beim Absenken nach vorn kommt: Die Knie dürfen über die Zehen, die Fersen bleiben unten. Split-Kniebeugen an der Schiene betrifft das weniger.',
    source: 'gängige Praxis',
  },
  railFacing: {
    what: '{exercise}: Du stehst andersherum, als es Oberschenkel und ein aufrechter Rücken brauchen.',
    why: 'Eine Stange, die beim Absenken nach hinten läuft, zieht den Rumpf nach vorn über; das erklärt einen Rücken, der unten rund wird.',
    suggestion:
      'Dreh dich zuerst um, damit die Stange beim Absenken nach vorn kommt. Die Knie dürfen über die Zehen, die Fersen bleiben unten. Split-Kniebeugen an der Schiene betrifft das weniger.',
    source: 'gängige Praxis',
  },
  weeklyVolume: {
    what: 'Mehr als 20 harte Sätze in dieser Woche gingen auf diese Muskeln: {muscles}.',
    why: 'Über etwa 20 Sätzen in der Woche sinkt der Ertrag; er ist nicht null, aber von jedem Satz musst du dich erholen.',
    suggestion: 'Prüf, wie die Erholung läuft, und lass die Sätze weg, die du nur noch abarbeitest.',
    source: 'Pelland et al. 2025, Sports Med; Metaanalyse von 2022 an trainierten Männern (12 bis 20 Sätze)',
  },
  spacing: {
    what: 'Harte Sätze für dieselben Muskeln ({muscles}) kamen weniger als zwei Tage nach den letzten.',
    why: 'Nach Sätzen nahe am Versagen brauchen die meisten ein bis zwei Tage, bis dieselben Muskeln wieder so viel leisten.',
    suggestion: 'Lass einen Tag dazwischen oder lass an einem der beiden Tage mehr in Reserve.',
    source: 'Morán-Navarro et al. 2017, Eur J Appl Physiol 117:2387',
  },
} satisfies Readonly<Record<FindingMessageId, FindingPatterns>>;

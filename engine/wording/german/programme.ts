import type { FindingMessageId } from '../../programme/finding.ts';
import type { FindingPatterns } from '../english/programme.ts';

const longLengths =
  'Training in der Dehnung hat in Studien bisher mindestens ebenso viel Muskelaufbau gebracht, in manchen mehr.';

const reps =
  '{isSpan, select, yes {{fewest} bis } other {}}{most, plural, one {# Wiederholung} other {# Wiederholungen}}';

const harder =
  '{way, select, load {Wähl eine Last, mit der ein Satz bei {from} bis {to} Wiederholungen endet.} handsAndFeet {Stell die Hände tiefer oder die Füße höher oder senk dich langsamer ab, bis ein Satz bei {from} bis {to} Wiederholungen endet.} other {Senk dich langsamer ab und halte in der Dehnung an oder nimm eine schwerere Variante, bis ein Satz bei {from} bis {to} Wiederholungen endet.}}';

const thenOthers = '{more, plural, =0 {} other { Danach, der Reihe nach: {othersInside}.}}';

/** What the plan of a session could do better. */
export const programme = {
  repsFewForGrowth: {
    what: `{exercises}: {count, plural, one {} other {jeweils }}${reps} je Satz geplant, und das Ziel ist Muskelaufbau.`,
    why: 'Muskeln wachsen über einen weiten Bereich von Wiederholungen etwa gleich gut, wenn die Sätze nah ans Muskelversagen gehen; mit noch weniger bringt ein Satz zu wenig für die Anstrengung.',
    suggestion:
      '{way, select, load {Wähl eine Last, mit der ein Satz bei {from} bis {to} Wiederholungen endet.} handsAndFeet {Stell die Hände höher oder die Füße tiefer, bis ein Satz bei {from} bis {to} Wiederholungen endet.} other {Nimm eine leichtere Variante oder etwas Hilfe, bis ein Satz bei {from} bis {to} Wiederholungen endet.}}',
    source: 'Bereich: gängige Praxis; Lasten im Vergleich: Schoenfeld et al. 2017, J Strength Cond Res 31:3508',
  },
  repsManyForGrowth: {
    what: `{exercises}: {count, plural, one {} other {jeweils }}${reps} je Satz geplant, und das Ziel ist Muskelaufbau.`,
    why: 'Muskeln wachsen über einen weiten Bereich von Wiederholungen etwa gleich gut, wenn die Sätze nah ans Muskelversagen gehen; mit noch mehr wird der Satz nur lang und ermüdend.',
    suggestion: harder,
    source: 'Bereich: gängige Praxis; Lasten im Vergleich: Schoenfeld et al. 2017, J Strength Cond Res 31:3508',
  },
  repsManyForStrength: {
    what: `{exercises}: {count, plural, one {} other {jeweils }}${reps} je Satz geplant, und das Ziel ist Kraft.`,
    why: 'Die Kraft in einer Übung hängt am meisten von der Last ab, und mit schweren Lasten schaffst du nur wenige Wiederholungen.',
    suggestion: harder,
    source: 'Schoenfeld et al. 2017, J Strength Cond Res 31:3508',
  },
  effort: {
    what: '{exercises}: Geplant ist, {count, plural, one {} other {jeweils }}mit {fewest, number, ::.##}{isSpan, select, yes { bis {most, number, ::.##}} other {}} Wiederholungen in Reserve aufzuhören.',
    why: 'Für den Muskelaufbau bringen Sätze, die näher am Muskelversagen enden, tendenziell etwas mehr.',
    suggestion:
      '{way, select, load {Leg Last oder Wiederholungen zu} handsAndFeet {Mach mehr Wiederholungen oder stell die Hände tiefer oder die Füße höher} other {Mach mehr Wiederholungen oder senk dich langsamer ab}}, bis etwa {enough} in Reserve bleiben, solange die Technik hält.',
    source: 'Refalo et al. 2023, Sports Med 53:649',
  },
  order: {
    what: 'Zuerst {earlier}, dann {laterInside}; {earlierCount, plural, one {beide} other {alle}} trainieren dieselben Muskeln: {muscles}.',
    why: 'Was du zuerst trainierst, wird am meisten stärker; die größere Übung beginnt dann mit müden Muskeln.',
    suggestion:
      'Besser zuerst: {laterInside}; es sei denn, {earlierInside} {earlierCount, plural, one {ist} other {sind}} dir wichtiger.',
    source: 'Nunes et al. 2021, Eur J Sport Sci 21:149; Simão et al. 2010, J Sports Sci Med 9:1',
  },
  loadOrder: {
    what: 'Zuerst {earlier} mit harten Sätzen zu {more, number} Wiederholungen, dann schwerer mit {fewer, number}: {laterInside}. {earlierCount, plural, one {Beide} other {Alle}} trainieren dieselben Muskeln ({muscles}).',
    why: 'Schwere Sätze brauchen frische Muskeln und einen frischen Kopf; wer müde hineingeht, verliert Last und Technik.',
    suggestion:
      'Besser zuerst: {laterInside}. {earlierCount, plural, one {Ist} other {Sind}} {earlierInside} nur zum Aufwärmen gedacht, dann hör weit vor dem Versagen auf.',
    source: 'Nunes et al. 2021, Eur J Sport Sci 21:149; bei anderen Zielen als Kraft: gängige Praxis',
  },
  setOrder: {
    what: '{exercises}: Harte Sätze mit weniger Last kommen vor den schwersten, und in die gehst du dann müde.',
    why: 'Die schwersten Sätze verlangen am meisten Kraft und Technik; sie gehören dorthin, wo beides frisch ist.',
    suggestion:
      'Wärm dich mit Sätzen auf, die weit vor dem Versagen enden, mach dann zuerst den schwersten Satz und danach mit weniger Last mehr Wiederholungen.',
    source: 'gängige Praxis',
  },
  volume: {
    what: '{sets, number, ::.#} harte Sätze dieser Einheit gehen auf dieselben Muskeln ({muscles}): {exercisesInside}{helped, select, yes {; was nur mithilft, zählt halb} other {}}.',
    why: 'Jeder weitere Satz einer Einheit bringt weniger als der davor, und in die letzten gehst du müde: Darunter leidet zuerst die Technik.',
    suggestion:
      '{fewer, plural, =0 {} other {Halbier sie: {items}.}}{out, plural, =0 {} other { Lass vorerst weg: {leftOutInside}.}}{addsBack, select, yes { Ist der Muskelkater bis zur nächsten Einheit weg und die Kraft zurück, leg je einen Satz zu.} other {}}',
    item: '{name} von {from} auf {to}',
    source: 'Schwelle und Halbieren: gängige Praxis; abnehmender Ertrag: Pelland et al. 2025, Sports Med',
  },
  volumeOfOne: {
    what: '{exercises}: {sets, number, ::.#} harte Sätze allein in dieser Übung.',
    why: 'Jeder weitere Satz einer Einheit bringt weniger als der davor, und in die letzten gehst du müde: Darunter leidet zuerst die Technik.',
    suggestion:
      'Halbier sie: {items}.{addsBack, select, yes { Ist der Muskelkater bis zur nächsten Einheit weg und die Kraft zurück, leg je einen Satz zu.} other {}}',
    item: '{name} von {from} auf {to}',
    source: 'Schwelle und Halbieren: gängige Praxis; abnehmender Ertrag: Pelland et al. 2025, Sports Med',
  },
  shortenedEndLoad: {
    what: '{exercises}: {count, plural, one {am schwersten} other {alle am schwersten}} in der Verkürzung und leicht in der Dehnung.',
    why: longLengths,
    suggestion: `{count, plural, one {Zusätzlich oder stattdessen} other {Besser als {exerciseInside}}}: {betterInside}.${thenOthers}`,
    source: 'Wolf et al. 2023, Int J Strength Cond 3(1); Maeo et al. 2021, Med Sci Sports Exerc 53:825',
  },
  shortenedEndWarmUp: {
    what: '{exercise}: belastet die Muskeln nur in der Verkürzung.',
    why: longLengths,
    suggestion: `Zum Aufwärmen ist das in Ordnung; für die Arbeitssätze besser: {betterInside}.${thenOthers}`,
    source: 'Wolf et al. 2023, Int J Strength Cond 3(1)',
  },
  shortenedEndPause: {
    what: '{exercise}: {seconds, plural, one {# Sekunde} other {# Sekunden}} in der Verkürzung gehalten ({shortenedEnd}) und kürzer in der Dehnung.',
    why: 'Halten in der Verkürzung bringt wenig; langsames Absenken und Arbeit in der Dehnung bringen mehr.',
    suggestion: 'Nutz die Sekunden lieber für langsameres Absenken und einen Halt in der Dehnung ({stretchedEnd}).',
    source: 'Umverteilen: gängige Praxis; Halten im Vergleich: Oranchuk et al. 2019, Scand J Med Sci Sports 29:484',
  },
  shortenedEndPauses: {
    what: '{exercises}: bis zu {seconds, plural, one {# Sekunde} other {# Sekunden}} in der Verkürzung gehalten und kürzer in der Dehnung.',
    why: 'Halten in der Verkürzung bringt wenig; langsames Absenken und Arbeit in der Dehnung bringen mehr.',
    suggestion: 'Nutz die Sekunden lieber für langsameres Absenken und einen Halt in der Dehnung.',
    source: 'Umverteilen: gängige Praxis; Halten im Vergleich: Oranchuk et al. 2019, Scand J Med Sci Sports 29:484',
  },
  curtailedRange: {
    what: '{exercises}: Der Bewegungsumfang ist zu klein, um die Muskeln ganz zu dehnen; Grund: {by}.',
    why: longLengths,
    suggestion: 'Zusätzlich oder stattdessen, wenn nichts gegen den vollen Bewegungsumfang spricht: {betterInside}.',
    source: 'Wolf et al. 2023, Int J Strength Cond 3(1)',
  },
  curtailedSetUp: {
    what: '{exercises}: Der Bewegungsumfang ist zu klein, um die Muskeln ganz zu dehnen; Grund: {by}.',
    why: longLengths,
    suggestion: '{remedy}{others, plural, =0 {} other { Oder stattdessen: {betterInside}.}}',
    source: 'Aufbau: gängige Praxis; Bewegungsumfang: Wolf et al. 2023, Int J Strength Cond 3(1)',
  },
  ladder: {
    what: '{exercises}: noch zu wenige saubere Wiederholungen je Satz.',
    why: 'Mit wenigen zähen Wiederholungen kommst du kaum voran; eine leichtere Stufe, auf der du fünf oder mehr saubere schaffst, baut die Kraft dafür auf.',
    suggestion: 'Nimm die erste dieser Stufen, die zu dir passt.',
    step: '{name}{hasWhy, select, yes {: {why}} other {}}',
    source: 'gängige Praxis',
  },
  bandAssisted: {
    what: '{exercises}: Ein Band hilft am meisten in der Dehnung und am wenigsten, wo die Übung am schwersten ist.',
    why: 'In der Dehnung willst du die Spannung, und an der schweren Stelle brauchst du die Hilfe.',
    suggestion: '{steps, plural, one {Das passt besser.} other {Das passt besser, das Beste zuerst.}}',
    step: '{name}{hasWhy, select, yes {: {why}} other {}}',
    source: 'gängige Praxis',
  },
  railBackward: {
    what: '{exercise}: So herum arbeitet mehr die Hüfte als der Oberschenkel.',
    why: 'Eine Stange, die beim Absenken nach hinten läuft, zieht den Oberkörper nach vorn, und der Rücken wird unten rund.',
    suggestion:
      'Für die Oberschenkel und einen aufrechten Rücken stell dich andersherum, damit die Stange beim Absenken nach vorn kommt: Die Knie dürfen über die Zehen, die Fersen bleiben unten. Split Squats an der Multipresse betrifft das weniger.',
    source: 'gängige Praxis',
  },
  railFacing: {
    what: '{exercise}: Du stehst andersherum, als es Oberschenkel und ein aufrechter Rücken brauchen.',
    why: 'Eine Stange, die beim Absenken nach hinten läuft, zieht den Oberkörper nach vorn; das erklärt einen Rücken, der unten rund wird.',
    suggestion:
      'Dreh dich zuerst um, damit die Stange beim Absenken nach vorn kommt. Die Knie dürfen über die Zehen, die Fersen bleiben unten. Split Squats an der Multipresse betrifft das weniger.',
    source: 'gängige Praxis',
  },
  weeklyVolume: {
    what: 'Mehr als 20 harte Sätze in dieser Woche gingen auf diese Muskeln: {muscles}.',
    why: 'Jenseits von etwa 20 Sätzen in der Woche bringt jeder Satz weniger; nicht nichts, aber von jedem musst du dich erholen.',
    suggestion: 'Prüf, wie die Erholung läuft, und lass die Sätze weg, die du nur noch abarbeitest.',
    source: 'Pelland et al. 2025, Sports Med; Metaanalyse von 2022 an trainierten Männern (12 bis 20 Sätze)',
  },
  spacing: {
    what: 'Harte Sätze für dieselben Muskeln ({muscles}) kamen weniger als zwei Tage nach den letzten.',
    why: 'Nach Sätzen nahe am Versagen brauchen die meisten ein bis zwei Tage, bis dieselben Muskeln wieder genauso viel leisten.',
    suggestion: 'Lass einen Tag dazwischen oder lass an einem der beiden Tage mehr in Reserve.',
    source: 'Morán-Navarro et al. 2017, Eur J Appl Physiol 117:2387',
  },
} satisfies Readonly<Record<FindingMessageId, FindingPatterns>>;

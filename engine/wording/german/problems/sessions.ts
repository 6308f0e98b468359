import type { sessions as english } from '../../english/problems/sessions.ts';

export const sessions = {
  sessionGone: 'Diese Einheit ist nicht in der Bibliothek. Es wurde nichts geändert.',
  sessionOfAnother:
    'Diese Einheit gehört zu einem anderen Athleten. Es wurde nichts übernommen; wähl eine Einheit des richtigen.',
  readOnlySession:
    'Diese Einheit kommt aus dem Rackside eines anderen Coachs und lässt sich hier nicht ändern. Starte eine Zweitbewertung, um selbst zu urteilen.',
  sessionHasClips: 'Diese Einheit hat Clips und wurde deshalb nicht entfernt.',
  traineeGone: 'Dieser Athlet ist nicht in der Bibliothek. Es wurde nichts geändert.',
  entryGone: 'Diese Übung ist nicht mehr in der Einheit. Es wurde nichts geändert.',
  cantAlign:
    '„{clip}“ und „{lead}“ lassen sich weder nach dem Ton noch nach den Wiederholungen abgleichen, es wurde nichts geändert. Leg von Hand in beiden denselben Moment fest.',
  pairElsewhere:
    '„{clip}“ und „{lead}“ gehören nicht zur selben Übung und damit nicht zum selben Satz, es wurde nichts geändert. Verschieb erst einen zur Übung des anderen.',
  pairTaken:
    '„{clip}“ oder „{lead}“ ist schon mit einem anderen Clip gekoppelt, es wurde nichts geändert. Trenn erst die beiden Kameras dort.',
  notPaired: '„{clip}“ ist mit keinem anderen Clip gekoppelt, es gab nichts zu trennen.',
  entryElsewhereClip: 'Diese Übung gehört zu einer anderen Einheit, es wurde kein Clip hinzugefügt.',
  entryElsewhereGrade: 'Diese Übung gehört zu einer anderen Einheit, es wurde keine Note geändert.',
  clipElsewhere: 'Dieser Clip gehört zu einer anderen Einheit, die Stelle wurde nicht gespeichert.',
  noExerciseNamed: 'Gib an, welche Übung die Clips zeigen. Es wurde keiner hinzugefügt.',
  exerciseUnknown: 'Die Übungsbibliothek kennt „{exercise}“ nicht, es wurde nichts geändert.',
  fixedParagraph:
    'Die Hinweise zur Vorsicht und die Schlusszeile bleiben, wie sie sind, es wurde nichts geändert. Schreib in einen anderen Absatz.',
  noParagraph: 'Diesen Absatz gibt es im Brief nicht mehr, es wurde nichts geändert.',
  letterNotSent: 'Version {version} dieses Briefs wurde nie verschickt. Es wurde nichts geändert.',
  letterChanged:
    'Version {version} dieses Briefs ist nicht mehr das, was verschickt wurde: Die Datei wurde außerhalb von Rackside geändert. Stell eine Sicherung wieder her, um ihn zu sehen.',
  letterUnreadable:
    'Dieser Brief lässt sich nicht mehr lesen. Es wurde nichts geändert; stell eine Sicherung wieder her, um ihn zu sehen.',
  noLetterForSecondLook:
    'Eine Zweitbewertung prüft dein eigenes Urteil und hat keinen Brief. Nimm den Brief der ersten Einheit.',
  secondLookOfSecond: 'Das ist schon eine Zweitbewertung. Starte eine weitere von der ersten Einheit aus.',
  nothingJudged: 'In dieser Einheit ist noch nichts bewertet, es gibt also nichts noch einmal anzusehen.',
  secondLookOpen: 'Zu dieser Einheit läuft schon eine Zweitbewertung. Schließ die erst ab.',
  noSecondLook: 'Zu dieser Einheit gibt es noch keine Zweitbewertung. Starte erst eine.',
  nothingShared:
    'Die beiden Bewertungen haben keinen Clip derselben Übung gemeinsam und lassen sich nicht vergleichen. Wähl zwei mit denselben Clips.',
  sameSession: 'Das ist zweimal dieselbe Einheit, die stimmt immer überein. Wähl eine andere.',
  onlySheetFormat:
    'Als {format} gibt es nur den Bewertungsbogen, es wurde nichts geschrieben. Wähl html, pdf, md oder txt.',
  noSuchClip: 'Diesen Clip gibt es in der Einheit nicht, es wurde nichts geschrieben. Wähl einen ihrer Clips.',
  nothingToUndo: 'In dieser Einheit gibt es nichts rückgängig zu machen.',
  nothingToRedo: 'In dieser Einheit gibt es nichts wiederherzustellen.',
  otherSessionChanged:
    'Das betraf auch die Einheit „{title}“ vom {date}, und dort hat sich seither etwas geändert. Deshalb ist nichts passiert; mach das erst dort rückgängig oder stell es dort wieder her.',
  nothingToRedoAtDesk: 'Hier wurde nichts rückgängig gemacht, es gibt nichts zu wiederholen.',
  mergeSent:
    'Der Brief {title, select, none {dieser Einheit} other {von „{title}“}} ist schon verschickt und ginge mit der geleerten Einheit verloren, deshalb wurde nichts zusammengelegt. Leg die andere Einheit mit dieser zusammen oder verschieb die Übungen.',
  notInBin: 'Das liegt nicht mehr im Papierkorb. Es wurde nichts gelöscht.',
  nothingToUndoAtDesk:
    'Hier wurde nichts entfernt, verschoben, zusammengelegt oder umbenannt, was sich rückgängig machen ließe.',
  secondLookStays:
    'Eine Zweitbewertung behält die Clips und den Athleten ihrer ersten Einheit. Es wurde nichts verschoben.',
  mergeElsewhere:
    'Die beiden Übungen stehen in verschiedenen Einheiten und wurden nicht zusammengelegt. Verschieb erst eine in die Einheit der anderen.',
  mergeOtherExercise: 'Zusammenlegen lassen sich nur zwei Einträge derselben Übung. Es wurde nichts geändert.',
  mergeOtherDay:
    'Zusammenlegen lassen sich nur zwei Einheiten desselben Athleten vom selben Tag, es wurde nichts geändert. Ändere erst das Datum.',
  notesTooLongToMerge:
    'Die Notizen beider Einheiten sind zusammen zu lang, die Einheiten wurden nicht zusammengelegt. Kürze erst die Notizen der einen.',
} as const satisfies Readonly<Record<keyof typeof english, string>>;

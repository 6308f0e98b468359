import type { handover as english } from '../../english/problems/handover.ts';

/** What is wrong with a folder or zip that should be a handover. */
const why = `{why, select,
  noList {Die Liste der Dateien fehlt}
  noReview {Die Bewertung fehlt}
  reviewChanged {Die Bewertung wurde nach der Übergabe geändert}
  footageOutside {Die Bewertung nennt ein Video, das nicht dabei ist}
  clipMissing {Ein Clip fehlt oder ist abgeschnitten}
  clipChanged {Ein Clip wurde unterwegs geändert}
  clipTooLong {Ein Clip ist länger als angegeben}
  clipDamaged {Ein Clip darin ist beschädigt}
  textTooLong {Ein Text darin ist viel zu lang}
  textUnreadable {Ein Text darin ist nicht lesbar}
  link {Es enthält eine Verknüpfung}
  noZip {Es ist keine Zip-Datei, oder sie ist abgeschnitten}
  tooManyFiles {Es enthält viel zu viele Dateien}
  listDamaged {Die Liste der Dateien ist beschädigt}
  growsTooMuch {Es würde ausgepackt viel zu groß}
  fileDamaged {Eine Datei darin ist beschädigt}
  twice {Eine Datei ist doppelt enthalten}
  locked {Eine Datei darin ist verschlüsselt}
  other {Es ist unvollständig}}`;

export const handover = {
  noHandover: `„{file}“ lässt sich nicht als Übergabe importieren. ${why}. Es wurde nichts importiert; lass sie dir noch einmal schicken.`,
  notOpened: '„{file}“ ließ sich nicht öffnen. Prüf den Pfad und versuch es noch einmal.',
  headNotFollowed:
    'Der Kopf in „{clip}“ ließ sich nicht verfolgen, von diesem Clip wurde nichts übergeben. Miss ihn mit Gelenken oder leg einen Kasten darüber.',
  originalLostFrames:
    'Der Kopie von „{clip}“ ohne Metadaten fehlen Bilder, das Original wurde weggelassen. Schick die Datei selbst.',
  repTooLong:
    'Die Wiederholung ist zu lang für eine so kleine Datei, es entstand keine Schleife. Setz Beginn und Ende oder schick den Clip mit Notizen.',
  footageUnnamed:
    'In der Bewertung steht nicht, wo das Video von „{clip}“ liegt, die Notizen haben keine Bilder. Gib dem Clip seinen Pfad.',
  footageWrong:
    '„{file}“ ist nicht das Video, das bewertet wurde, die Notizen haben keine Bilder. Gib dem Clip den richtigen Pfad.',
  handedFootageChanged:
    'Die Datei von „{clip}“ wurde auf dem Datenträger verändert, seit sie hinzukam; die Notizen haben keine Bilder. Füg die gefilmte Datei noch einmal hinzu und übergib dann wieder.',
  footageNotInLibrary:
    'Das Video von „{clip}“ ist nicht in der Bibliothek, die Notizen haben keine Bilder. Leg die Datei zurück und übergib noch einmal.',
  folderNotWritten:
    'Die Übergabe ließ sich nicht in „{folder}“ schreiben, dort liegt nichts Unvollständiges. Prüf, ob der Ordner beschreibbar ist und genug Platz hat.',
  namesToCheck:
    'In der Einheit von {trainee} ({date}) steht an {count, plural, one {einer Stelle} other {# Stellen}} vielleicht der verborgene Name. Es wurde nichts übergeben; prüf sie unter „Übergeben“.',
  neverHandedOver: 'Version {version} dieser Einheit wurde nie übergeben. Es wurde nichts geschrieben.',
  keptFileMissing: 'Die Datei „{file}“ fehlt, es wurde nichts geschrieben. Stell eine Sicherung wieder her.',
  keptFileChanged:
    'Die Datei „{file}“ ist nicht mehr das, was übergeben wurde, es wurde nichts geschrieben. Stell eine Sicherung wieder her.',
} as const satisfies Readonly<Record<keyof typeof english, string>>;

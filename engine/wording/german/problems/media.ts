import type { media as english } from '../../english/problems/media.ts';

export const media = {
  notUnderstood:
    '„{file}“ gibt nicht an, wie groß das Bild ist oder wie die Zeit gezählt wird. Es wurde nichts geändert; speicher das Video in einem Schnittprogramm noch einmal als MP4 und nimm diese Kopie.',
  noTimes:
    '„{file}“ gibt nicht an, wann welches Bild gezeigt wird. Es wurde nichts geändert; speicher das Video in einem Schnittprogramm noch einmal als MP4 und nimm diese Kopie.',
  singlePicture: '„{file}“ ist ein einzelnes Bild ohne Bewegung. Es wurde nichts geändert; wähl ein Video.',
  notAFile: '„{file}“ ist keine Datei. Es wurde nichts geändert; wähl eine Videodatei.',
  emptyFile:
    '„{file}“ ist leer (0 Byte). Es wurde nichts geändert; kopier die Datei noch einmal von Kamera oder Handy.',
  onlySound: '„{file}“ enthält kein bewegtes Bild, nur Ton oder Daten. Es wurde nichts geändert; wähl ein Video.',
  cutShort:
    '„{file}“ ist abgeschnitten: {counted, select, fewer {Nur {whole} von {stated} Bildern im Verzeichnis sind lesbar} other {Die Daten enden zu früh}}. Es wurde nichts geändert; kopier die Datei noch einmal von Kamera oder Handy.',
  noFrames:
    '„{file}“ enthält keine Bilder. Es wurde nichts geändert; kopier die Datei noch einmal von Kamera oder Handy.',
  damagedFile:
    '„{file}“ ist abgeschnitten oder beschädigt: Das Verzeichnis der Bilder lässt sich nicht lesen. Es wurde nichts geändert; kopier die Datei noch einmal von Kamera oder Handy.',
  noVideo: '„{file}“ ist kein Video, auch wenn der Name so aussieht. Es wurde nichts geändert; wähl eine Videodatei.',
  playableCopyLost:
    '„{file}“ hat {frames} Bilder, für eine abspielbare Kopie waren aber nur {decoded} lesbar. Es wurde nichts geändert; kopier die Datei noch einmal von Kamera oder Handy oder speicher sie neu als MP4.',
  frameLost:
    '„{file}“ hat {frames} Bilder, Bild Nummer {frame} ist aber nicht lesbar. Es wurde nichts geändert; kopier die Datei noch einmal von Kamera oder Handy oder speicher sie neu als MP4.',
  noFileThere: 'Dort gibt es keine Datei „{file}“. Es wurde nichts geändert; prüf Name und Ordner.',
  fileUnreadable: '„{file}“ ließ sich nicht lesen. Prüf, ob die Datei noch da ist.',
  changedWhileRead:
    '„{file}“ hat sich beim Lesen verändert. Warte, bis die Datei vollständig ist, und versuch es noch einmal.',
  diskFullFor:
    'Der Datenträger ist voll, für „{file}“ wurde nichts erzeugt. Der Clip ist unverändert; schaff Platz und versuch es noch einmal.',
  notDecoded:
    'Die Bilder von „{file}“ sind nicht lesbar. Der Clip ist unverändert; spiel ihn woanders ab, um zu sehen, ob er beschädigt ist.',
  notEncoded:
    '„{file}“ ließ sich nicht erzeugen. Der Clip ist unverändert; setz FFMPEG_PATH auf ein vollständiges ffmpeg und versuch es noch einmal.',
  stillsNotEncoded:
    'Die Standbilder ließen sich nicht erzeugen. Der Clip ist unverändert; setz FFMPEG_PATH auf ein vollständiges ffmpeg und versuch es noch einmal.',
  notWrittenBeside:
    'Neben „{file}“ ließ sich nichts schreiben. Der Clip ist unverändert; prüf, ob der Ordner beschreibbar ist und genug Platz hat.',
  toolUnfit:
    '{variable} nennt ein Programm, das nicht als {tool} läuft. Es wurde nichts geändert; korrigier die Angabe oder lösch sie, dann nimmt Rackside das mitgelieferte {tool}.',
  toolMissing:
    'Es wurde kein lauffähiges {tool} gefunden. Es wurde nichts geändert; führ noch einmal „npm install“ aus oder setz {variable} auf eines auf diesem Computer.',
  noNotices:
    'Die Hinweise zu fremder Software (THIRD-PARTY.md) fehlen in Racksides Ordner; es wurde nichts geändert. Installier Rackside neu, dann sind sie wieder da.',
  alreadyInSession: '„{file}“ ist schon in dieser Einheit und wurde nicht noch einmal hinzugefügt.',
  arrivalGone: 'Dieser Clip liegt nicht mehr im Eingang. Es wurde nichts geändert.',
  arrivalUnread:
    '„{file}“ ist noch nicht eingelesen. Es wurde nichts übernommen; warte, bis ein Bild davon zu sehen ist.',
  noFramesInLibrary: 'Das Video von „{clip}“ ist nicht in der Bibliothek, es gibt keine Bilder.',
  pictureMissing:
    '{what, select, poster {Das Vorschaubild} filmstrip {Der Filmstreifen} other {Das Video}} von „{clip}“ liegt nicht im Ordner der Bibliothek.',
  footageElsewhere: 'Das Video dieses Clips ist nicht in der Bibliothek; Bemerkungen und Note sind da.',
  playableCopyToCome: 'Von diesem Clip muss noch eine abspielbare Kopie entstehen; siehe Aufträge.',
  playableCopyMissing:
    'Die abspielbare Kopie von „{clip}“ fehlt im Ordner „clips“ der Bibliothek. Leg sie zurück, um diesen Clip zu sehen.',
  clipFileMissing:
    'Die Datei von „{clip}“ fehlt im Ordner „clips“ der Bibliothek. Leg sie zurück oder importier den Clip noch einmal, um ihn zu sehen.',
  playableCopyAnew:
    'Die abspielbare Kopie von „{clip}“ fehlt oder wurde auf dem Datenträger verändert und entsteht neu (siehe Aufträge). Der Clip selbst und seine Bemerkungen sind unberührt.',
  clipFileChanged:
    'Die Datei von „{clip}“ wurde auf dem Datenträger verändert, seit sie hinzukam; sie wird weder gezeigt noch gemessen. Bemerkungen und Note sind unberührt. Füg die gefilmte Datei noch einmal hinzu, dann liegt sie wieder da.',
  noFootageToCopy: 'Das Video ist nicht in der Bibliothek, es entstand keine abspielbare Kopie.',
  nothingToMeasure:
    'Das Video von „{clip}“ ist nicht in der Bibliothek, es gibt nichts zu messen. Importier erst den Clip.',
  footageFileMissing:
    'Die Datei „clips/{file}“ fehlt, „{clip}“ wurde nicht gemessen. Leg sie zurück und versuch es noch einmal.',
  jointsUnavailable:
    'Auf diesem Computer lassen sich keine Gelenke finden. Der Clip und seine übrigen Messwerte sind unverändert; installier das Programm neu oder miss ohne Gelenke.',
  measuringCancelled: 'Abgebrochen. Was vorher gemessen war, bleibt.',
  voiceNotEncoded:
    'Der Audiokommentar ließ sich nicht umwandeln und bleibt, wie er aufgenommen wurde; setz FFMPEG_PATH auf ein vollständiges ffmpeg und versuch es noch einmal.',
  nothingToNarrate:
    'Das Video von „{clip}“ ist nicht in der Bibliothek, es gibt nichts zu kommentieren. Importier erst den Clip.',
  narratedAlready:
    '„{clip}“ hat schon einen Audiokommentar, deshalb wurde nichts aufgenommen. Lösch erst den vorhandenen.',
  nothingRecorded:
    'Zu „{clip}“ wurde nichts aufgenommen, es gibt nichts zu behalten. Prüf das Mikrofon und nimm noch einmal auf.',
  notNarrated:
    'Zu „{clip}“ gibt es keinen Audiokommentar in der Bibliothek, es entstand kein Video. Nimm erst einen auf.',
  narrationGone: 'Diesen Audiokommentar gibt es in der Bibliothek nicht mehr. Es wurde nichts geändert.',
  narrationKept: 'Dieser Audiokommentar ist fertig, es kam nichts hinzu. Lösch ihn, um einen neuen aufzunehmen.',
} as const satisfies Readonly<Record<keyof typeof english, string>>;

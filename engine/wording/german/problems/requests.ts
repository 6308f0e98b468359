import type { requests as english } from '../../english/problems/requests.ts';

export const requests = {
  asWritten: '{sentence}',
  unforeseen: 'In Rackside ist etwas schiefgegangen, deshalb ist nichts passiert. Deine Bibliothek ist unverändert.',
  diskFull:
    'Der Datenträger mit {place, select, folder {„{folder}“} other {der Bibliothek}} ist voll, deshalb wurde nichts gespeichert. Schaff Platz und versuch es noch einmal.',
  diskRefused:
    '{why, select, readOnly {{place, select, folder {„{folder}“} other {Der Ordner der Bibliothek}} ist schreibgeschützt, deshalb ist nichts passiert. Heb den Schreibschutz auf} noPermission {Für {place, select, folder {„{folder}“} other {den Ordner der Bibliothek}} fehlt Rackside die Berechtigung, deshalb ist nichts passiert. Erlaub den Zugriff} other {Der Datenträger mit {place, select, folder {„{folder}“} other {der Bibliothek}} ließ sich nicht lesen oder beschreiben, deshalb ist nichts passiert. Prüf ihn}} und versuch es noch einmal.',
  cancelled: 'Abgebrochen. Es bleibt nichts Unvollständiges zurück.',
  unknownRequest: 'Rackside kennt diese Anfrage nicht. Es wurde nichts geändert.',
  refusedRequest:
    'Die Anfrage {request} wurde abgelehnt und nichts wurde geändert: {field} ist nicht so, wie es sein muss ({reason}).',
  refusedRequestWhole:
    'Die Anfrage {request} wurde abgelehnt und nichts wurde geändert: Sie ist nicht so, wie sie sein muss ({reason}).',
  unknownQuestion: 'Das Fenster hat nach etwas Unbekanntem gefragt. Es wurde nichts geändert.',
  faultyQuestion: 'Das Fenster hat eine fehlerhafte Anfrage „{request}“ geschickt ({field}). Es wurde nichts geändert.',
  strangeQuestion: 'Die Anfrage kam nicht aus dem Fenster selbst und wurde abgelehnt.',
  notOpenedYet: 'Die Bibliothek ist noch nicht geöffnet. Versuch es gleich noch einmal.',
  closing: 'Rackside wird gerade beendet, deshalb ist nichts passiert. Was gespeichert war, ist sicher.',
  stoppedOnce:
    'Der Teil von Rackside, der die Bibliothek verwaltet, ist ausgefallen und wurde neu gestartet. Was gespeichert war, ist sicher; versuch es bitte noch einmal.',
  keepsStopping:
    'Der Teil von Rackside, der die Bibliothek verwaltet, fällt immer wieder aus. Was gespeichert war, ist sicher; beende Rackside und öffne es neu.',
  jobGone: 'Dieser Auftrag steht nicht mehr in der Liste. Es wurde nichts geändert.',
  jobEnded: 'Dieser Auftrag ist schon beendet, es gab nichts abzubrechen.',
  jobNotInLine: 'Dieser Clip wartet nicht mehr aufs Messen, deshalb blieb die Reihenfolge, wie sie war.',
  jobNotFailed: 'Dieser Auftrag ist nicht fehlgeschlagen, es gab nichts zu wiederholen.',
  noNextPage: 'Die Liste geht von dort nicht weiter. Frag nach der ersten Seite.',
} as const satisfies Readonly<Record<keyof typeof english, string>>;

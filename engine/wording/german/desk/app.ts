import type { AppMessageId } from '../../english/desk/app.ts';

export const app: Readonly<Record<AppMessageId, string>> = {
  opening: 'Die Bibliothek wird geöffnet …',
  sessionUnread: 'Diese Einheit ließ sich nicht öffnen',
  toDesk: 'Zurück zur Übersicht',
  tryAgain: 'Noch einmal versuchen',
  windowTitle:
    '{screen, select, desk {Übersicht} inbox {Eingang} review {Bewertung} letter {Brief} handover {Übergeben} trainees {{voice, select, self {Personen} other {Athleten}}} bin {Papierkorb} trainee {{voice, select, self {Mein Training} other {Athlet}}} compare {Vergleich} agreement {Übereinstimmung} other {Start}} – Rackside',
};

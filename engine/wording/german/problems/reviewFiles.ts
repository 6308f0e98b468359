import type { reviewFiles as english } from '../../english/problems/reviewFiles.ts';

export const reviewFiles = {
  reviewNotOpened: '„{file}“ ließ sich nicht öffnen. Prüf den Pfad und versuch es noch einmal.',
  reviewNoFile: '„{file}“ ist keine Datei. Gib den Pfad einer Bewertungsdatei an.',
  reviewTooLarge: '„{file}“ ist größer als die 5 MB, die eine Bewertungsdatei haben darf, und wurde nicht gelesen.',
  reviewNotText: '„{file}“ ist kein UTF-8-Text und kann keine Bewertungsdatei sein.',
  reviewNotJson: '„{file}“ ist kein gültiges JSON und lässt sich nicht als Bewertung lesen.',
  reviewFootageWrong: '„{file}“ ist nicht das Video, das bewertet wurde; die Einheit wurde weggelassen.',
  reviewFootageOutside:
    '„{file}“ verweist auf Videos außerhalb des eigenen Ordners, deshalb wurde nichts importiert: {paths}. Erlaub {count, plural, one {es} other {sie}} oder leg die Clips neben die Bewertung.',
  reviewFrameMisplaced:
    'Die Bewertung nennt Bild {frame} in Clip „{clip}“, das es im Video nicht gibt; die Einheit wurde weggelassen. Prüf, ob es das bewertete Video ist.',
  reviewSecondsMisplaced:
    'Die Bewertung nennt {seconds} s in Clip „{clip}“, die es im Video nicht gibt; die Einheit wurde weggelassen. Prüf, ob es das bewertete Video ist.',
} as const satisfies Readonly<Record<keyof typeof english, string>>;

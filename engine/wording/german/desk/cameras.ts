import type { CamerasMessageId } from '../../english/desk/cameras.ts';

/** Clips that show one set from several sides. */
export const cameras: Readonly<Record<CamerasMessageId, string>> = {
  swap: 'Andere Kamera: {clip}. Groß zeigen.',
  laid: '„{clip}“ und „{lead}“ zeigen jetzt denselben Satz, abgeglichen {by, select, sound {nach dem Ton} reps {nach den Wiederholungen} other {von Hand}}.',
  nowTheOther:
    'Dieser Moment von „{clip}“ ist gemerkt. Zeig jetzt denselben Moment im anderen Clip und wähl die Aktion noch einmal.',
};

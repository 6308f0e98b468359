import type { CamerasMessageId } from '../../english/desk/cameras.ts';

/** Clips, die einen Satz von mehreren Seiten zeigen. */
export const cameras: Readonly<Record<CamerasMessageId, string>> = {
  swap: 'Andere Kamera: {clip}. Groß zeigen.',
  laid: '„{clip}“ und „{lead}“ zeigen jetzt einen Satz, zusammengelegt {by, select, sound {am Ton} reps {an den Wiederholungen} other {von Hand}}.',
  nowTheOther:
    'Dieser Moment von „{clip}“ ist gemerkt; jetzt denselben Moment im anderen Clip zeigen und die Aktion noch einmal wählen.',
};

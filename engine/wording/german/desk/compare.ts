import type { CompareMessageId } from '../../english/desk/compare.ts';

export const compare: Readonly<Record<CompareMessageId, string>> = {
  compare: 'Vergleich',
  review: 'Bewertung',
  beside: 'Vergleichen mit',
  chooseClip: 'Clip wählen',
  clip: '{date}, {name}',
  thisClip: '{date}, {name} (dieser Clip)',
  reading: 'Der Clip wird geöffnet …',
  leftNeedsReps:
    'Markier zuerst die Wiederholungen dieses Clips: Die beiden Clips werden Wiederholung für Wiederholung verglichen.',
  rightNeedsReps:
    'Markier zuerst die Wiederholungen des anderen Clips: Die beiden Clips werden Wiederholung für Wiederholung verglichen.',
  left: 'Links',
  right: 'Rechts',
  repOf: '{side}: Wiederholung',
  notShown: 'Dieser Clip lässt sich nicht zeigen: Vielleicht fehlt seine Datei oder sie ist beschädigt.',
  readout: 'Bild {frame}, {time}; {seconds} s in Wiederholung {rep}',
  bothClips: 'Beide Clips',
  play: 'Abspielen',
  pause: 'Anhalten',
  frameBack: 'Voriges Bild',
  frameOn: 'Nächstes Bild',
  speed: 'Geschwindigkeit',
  times: '{speed} ×',
};

import type { LayerMessageId } from '../../english/desk/layers.ts';

export const layers: Readonly<Record<LayerMessageId, string>> = {
  disc: 'Rand der Scheibe',
  point: 'Der verfolgte Punkt',
  joints: 'Gelenke auf der Kameraseite, {guessed} von {count} geschätzt',
  path: 'Weg der Last in {count, plural, one {# Wiederholung} other {# Wiederholungen}}',
};

import { type Equipment, equipmentItems } from '../exercises/equipment.ts';
import { type Language, localeOf } from '../language/language.ts';
import { equipmentWording, sayerOf } from './wordings.ts';

/** What there is to train with, in words: the place, or the items joined; null where it is an empty list. */
export function sayEquipment(equipment: Equipment, language: Language): string | null {
  const say = sayerOf(equipmentWording, language);
  if (typeof equipment === 'string') return say(equipment);
  const items = equipmentItems.filter((item) => equipment.includes(item)).map((item) => say(item));
  return items.length === 0 ? null : new Intl.ListFormat(localeOf[language], { type: 'conjunction' }).format(items);
}

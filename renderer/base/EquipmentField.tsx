import { type Equipment, equipmentItems, itemsOf, places } from '../../engine/exercises/equipment.ts';
import { sayEquipment } from '../../engine/wording/sayEquipment.ts';
import { equipmentWording, sayerOf } from '../../engine/wording/wordings.ts';
import { deskLanguage } from '../words/deskLanguage.ts';
import { sayParts } from '../words/sayParts.ts';
import { capitalized } from './capitalized.ts';
import { Field, Tick } from './fields.tsx';

/** What there is to train with, in words: "a full gym", "barbell and rack", "nothing". */
export const wordsOfEquipment = (equipment: Equipment): string =>
  sayEquipment(equipment, deskLanguage.getState().language) ?? sayParts('noEquipment');

type EquipmentFieldProps = {
  readonly label: string;
  /** What stands for nothing stated: "Not stated", "As usual". */
  readonly unstated: string;
  /** Null = not stated. */
  readonly value: Equipment | null;
  readonly onChange: (equipment: Equipment | null) => void;
};

const listed = 'items';

/** What there is to train with: a usual place, or items one by one. */
export function EquipmentField({ label, unstated, value, onChange }: EquipmentFieldProps) {
  const language = deskLanguage((state) => state.language);
  const say = sayerOf(equipmentWording, language);
  const items = value === null ? null : itemsOf(value);
  const choose = (chosen: string): void => {
    const place = places.find((known) => known === chosen);
    if (chosen === listed) onChange(equipmentItems.filter((item) => items?.has(item) ?? false));
    else onChange(place ?? null);
  };
  return (
    <>
      <Field label={label}>
        <select
          value={value === null ? '' : typeof value === 'string' ? value : listed}
          onChange={(event) => choose(event.target.value)}
        >
          <option value="">{unstated}</option>
          {places.map((place) => (
            <option key={place} value={place}>
              {capitalized(say(place))}
            </option>
          ))}
          <option value={listed}>{sayParts('pickItems')}</option>
        </select>
      </Field>
      {Array.isArray(value) && (
        <fieldset className="equipment-items" aria-label={sayParts('items', { label })}>
          {equipmentItems.map((item) => (
            <Tick
              key={item}
              checked={value.includes(item)}
              onChange={(isThere) =>
                onChange(equipmentItems.filter((known) => (known === item ? isThere : value.includes(known))))
              }
            >
              {capitalized(say(item))}
            </Tick>
          ))}
        </fieldset>
      )}
    </>
  );
}

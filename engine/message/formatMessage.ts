import { IntlMessageFormat } from 'intl-messageformat';
import type { MessageValue, MessageValues } from './message.ts';

/** Made once for each pattern and locale: a formatter costs more than grading an exercise. */
const formats = new Map<string, IntlMessageFormat>();
const lists = new Map<string, Intl.ListFormat>();

function formatOf(pattern: string, locale: string): IntlMessageFormat {
  const key = `${locale} ${pattern}`;
  const known = formats.get(key) ?? new IntlMessageFormat(pattern, locale, undefined, { ignoreTag: true });
  formats.set(key, known);
  return known;
}

function listOf(locale: string): Intl.ListFormat {
  const known = lists.get(locale) ?? new Intl.ListFormat(locale, { type: 'conjunction' });
  lists.set(locale, known);
  return known;
}

const isList = (value: unknown): value is readonly (string | number)[] => Array.isArray(value);

/** Values as a formatter takes them: several as a list ("1, 2 and 5"). */
function shown<Value>(
  values: Readonly<Record<string, MessageValue | Value>>,
  locale: string,
): Record<string, string | number | Value> {
  return Object.fromEntries(
    Object.entries(values).map(([name, value]) => [
      name,
      isList(value) ? listOf(locale).format(value.map(String)) : value,
    ]),
  );
}

/**
 * An ICU message in a locale (BCP 47) with its values: plurals, numbers and choices by the locale's rules, several
 * values as a list ("1, 2 and 5"). Throws an Error when a value is missing or the pattern is not valid.
 * Source: Unicode ICU, MessageFormat 1.
 */
export function formatMessage(pattern: string, locale: string, values: MessageValues = {}): string {
  return String(formatOf(pattern, locale).format(shown(values, locale)));
}

/** The same message in parts. A value may also be an object; it comes back as it is, between the words around it. */
export function formatMessageParts<Value extends object>(
  pattern: string,
  locale: string,
  values: Readonly<Record<string, MessageValue | Value>>,
): (string | Value)[] {
  return formatOf(pattern, locale)
    .formatToParts<Value>(shown(values, locale))
    .map(({ value }) => value);
}

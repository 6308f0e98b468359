import { IntlMessageFormat } from 'intl-messageformat';
import type { MessageValue } from './message.ts';

const made = new Map<string, IntlMessageFormat>();

function formatOf(pattern: string, locale: string): IntlMessageFormat {
  const key = `${locale} ${pattern}`;
  const known = made.get(key);
  if (known !== undefined) return known;
  const format = new IntlMessageFormat(pattern, locale, undefined, { ignoreTag: true });
  made.set(key, format);
  return format;
}

/**
 * An ICU message in a locale (BCP 47) with its values: plurals, numbers and choices by the locale's rules, several
 * values as a list ("1, 2 and 5"). Throws an Error when a value is missing or the pattern is none.
 * Source: Unicode ICU, MessageFormat 1.
 */
export function formatMessage(
  pattern: string,
  locale: string,
  values: Readonly<Record<string, MessageValue>> = {},
): string {
  const list = new Intl.ListFormat(locale, { type: 'conjunction' });
  const shown = Object.entries(values).map(([name, value]): [string, string | number] => [
    name,
    typeof value === 'object' ? list.format(value.map(String)) : value,
  ]);
  return String(formatOf(pattern, locale).format(Object.fromEntries(shown)));
}

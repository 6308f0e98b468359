import * as v from 'valibot';
import { places } from '../exercises/equipment.ts';
import { within } from './plainData.ts';
import { equalPlanSchema, listedPlanSchema } from './plan.ts';
import { formatVersions } from './review.ts';
import { describe, quote, type Trouble } from './trouble.ts';

/** What a value of the wrong kind should have been, by the schema that refused it. */
const kinds: Readonly<Record<string, string>> = {
  strict_object: 'an object with named fields',
  array: 'a list',
  strict_tuple: 'a list with as many points as the shape has',
  string: 'a text',
  number: 'a number',
  boolean: 'true or false',
  integer: 'a whole number',
  safe_integer: 'a whole number',
  finite: 'a number',
};

/** How a patterned text is written, by its field. */
const patterns: Readonly<Record<string, string>> = {
  id: 'must be up to 64 letters, digits, dots, dashes or underscores',
  clip: 'must be the id of a clip',
  criterion: 'must be the id of a criterion, such as depth',
  tempo: 'must be written like 3-1-X-0',
  sha256: 'must be 64 digits from 0 to f',
};

type Issue = v.BaseIssue<unknown>;

const pathOf = (issue: Issue): string => (issue.path ?? []).reduce((path, item) => within(path, item.key), '');

/** The choices of a picklist or literal as the schema prints them: ("a" | "b") -> a, b. */
const choices = (issue: Issue): string =>
  (issue.expected ?? '').replace(/[()"]/g, '').replaceAll(' | ', ', ').slice(0, 200);

function boundSentence(issue: Issue): string | null {
  const bound = String(issue.requirement);
  switch (issue.type) {
    case 'min_value':
      return `is ${describe(issue.input)}, but must be ${bound} or more`;
    case 'max_value':
      return `is ${describe(issue.input)}, but must be ${bound} or less`;
    case 'min_length':
      return Array.isArray(issue.input) ? 'must not be an empty list: name at least one' : 'must not be empty';
    case 'max_length':
      return Array.isArray(issue.input)
        ? `holds more than ${bound} items: shorten it`
        : `is longer than ${bound} characters: shorten it`;
    default:
      return null;
  }
}

/** One schema issue as a path and a clause: "must be one of keep, prefer, ..., but is the text "sever"". */
export function troubleOfIssue(issue: Issue): Trouble {
  const path = pathOf(issue);
  if (issue.type === 'strict_object' && issue.expected === 'never') {
    return {
      path,
      what: `has a field ${quote(String(issue.path?.at(-1)?.key))} that the format doesn't know: take it out`,
    };
  }
  if (issue.type === 'variant') return { path, what: `must have a shape, one of ${choices(issue)}` };
  if (issue.input === undefined) return { path, what: 'is missing: add it' };
  const bound = boundSentence(issue);
  if (bound !== null) return { path, what: bound };
  if (issue.type === 'literal' && path === 'version') return { path, what: versionSentence(issue) };
  if (issue.type === 'picklist') {
    return { path, what: `must be one of ${choices(issue)}, but is ${describe(issue.input)}` };
  }
  if (issue.type === 'literal') return { path, what: `must be ${choices(issue)}, but is ${describe(issue.input)}` };
  if (issue.type === 'union') {
    const closer = path.endsWith('.plan') ? troubleInPlan(issue) : null;
    return closer ?? { path, what: unionSentence(path) };
  }
  if (issue.type === 'iso_date') {
    return { path, what: `must be a date such as 2025-03-09, but is ${describe(issue.input)}` };
  }
  if (issue.type === 'regex') {
    const how = patterns[path.split('.').at(-1) ?? ''] ?? 'is not written as the format asks';
    return { path, what: `${how}, but is ${describe(issue.input)}` };
  }
  return { path, what: `must be ${kinds[issue.type] ?? 'as the format asks'}, but is ${describe(issue.input)}` };
}

/** What is wrong with a plan in the form that it is written in; null where it is no object at all. */
function troubleInPlan(issue: Issue): Trouble | null {
  const { input } = issue;
  if (typeof input !== 'object' || input === null) return null;
  const form = 'sets' in input && Array.isArray(input.sets) ? listedPlanSchema : equalPlanSchema;
  const [inside] = v.safeParse(form, input).issues ?? [];
  if (inside === undefined) return null;
  const [first, ...others] = [...(issue.path ?? []), ...(inside.path ?? [])];
  return first === undefined ? null : troubleOfIssue({ ...inside, path: [first, ...others] });
}

/** A version of the format that is not read here: a whole number beyond those that are comes from a newer program. */
function versionSentence(issue: Issue): string {
  const { input } = issue;
  return typeof input === 'number' && Number.isInteger(input) && input > Math.max(...formatVersions)
    ? `is ${input}, which is newer than this program: open the file with a newer one`
    : `must be one of ${formatVersions.join(', ')}, but is ${describe(input)}`;
}

function unionSentence(path: string): string {
  if (path.endsWith('.plan')) return 'must be an object with the sets of a plan';
  if (path.endsWith('.equipment'))
    return `must be a usual place to train (${places.join(', ')}) or a list of equipment`;
  return path.endsWith('.reps')
    ? 'must be "set" or a list of rep numbers from 1'
    : 'must be a moment: a frame with its ticks, or seconds from 0 to 86400';
}

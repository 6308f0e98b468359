import { useId, useMemo, useState } from 'react';
import { type SearchedCatalogue, searchExercises } from '../../engine/exercises/searchExercises.ts';
import { patterns } from '../../engine/wording/english/desk/patterns.ts';
import { sayParts } from '../words/sayParts.ts';
import { sayPatterns } from '../words/sayPatterns.ts';
import { capitalized } from './capitalized.ts';

/** An exercise that is offered before the library: the session already has it. */
type KnownChoice = { readonly value: string; readonly exercise: string };

type ExercisePickerProps = {
  readonly catalogue: SearchedCatalogue;
  readonly inSession?: readonly KnownChoice[];
  /** The value chosen: an exercise id or the value of a known choice; '' = none. */
  readonly chosen: string;
  readonly placeholder?: string;
  readonly layout?: 'above' | 'inline';
  /** Called with the value when it is another one. */
  readonly onChoose: (value: string) => void;
};

type Option = { readonly value: string; readonly name: string };
type Group = { readonly heading: string; readonly options: readonly Option[] };

/**
 * The exercise library as a list that typing filters, by name, everyday name or a near spelling, in every language of the
 * catalogue. Arrow keys move, Enter picks, Escape leaves the choice as it was.
 */
export function ExercisePicker(props: ExercisePickerProps) {
  const { catalogue, inSession = [], chosen, placeholder, layout = 'above', onChoose } = props;
  /** What is typed while the list is open; null = closed. */
  const [typed, setTyped] = useState<string | null>(null);
  const [at, setAt] = useState(0);
  const inputId = useId();
  const listId = useId();
  const groups = useMemo(
    () => (typed === null ? [] : groupsOf(catalogue, inSession, typed)),
    [catalogue, inSession, typed],
  );
  const options = groups.flatMap((group) => group.options);

  const open = (): void => {
    if (typed !== null) return;
    setTyped('');
    setAt(0);
  };
  const choose = (option: Option | undefined): void => {
    if (option === undefined) return;
    setTyped(null);
    if (option.value !== chosen) onChoose(option.value);
  };
  const move = (to: number): void => {
    const next = Math.min(Math.max(0, to), Math.max(0, options.length - 1));
    setAt(next);
    document.getElementById(`${listId}-${next}`)?.scrollIntoView({ block: 'nearest' });
  };
  const onKeyDown = (event: React.KeyboardEvent): void => {
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (step !== undefined && typed === null) open();
    else if (step !== undefined) move(at + step);
    else if (typed === null) return;
    else if (event.key === 'Enter') choose(options[at]);
    else if (event.key === 'Escape') setTyped(null);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };

  return (
    <div className={layout === 'inline' ? 'picker field-inline' : 'picker field'}>
      <label htmlFor={inputId}>{sayParts('exercise')}</label>
      <input
        id={inputId}
        type="text"
        role="combobox"
        aria-expanded={typed !== null}
        aria-autocomplete="list"
        aria-controls={listId}
        aria-activedescendant={options[at] === undefined ? undefined : `${listId}-${at}`}
        autoComplete="off"
        spellCheck={false}
        placeholder={placeholder}
        value={typed ?? nameOf(catalogue, inSession, chosen)}
        onClick={open}
        onFocus={(event) => event.currentTarget.select()}
        onBlur={() => setTyped(null)}
        onChange={(event) => {
          setTyped(event.target.value);
          setAt(0);
        }}
        onKeyDown={onKeyDown}
      />
      <div
        role="listbox"
        id={listId}
        aria-label={sayParts('exercises')}
        className="picker-list"
        hidden={typed === null}
      >
        {groups.map((group) => (
          // biome-ignore lint/a11y/useSemanticElements: a group of options in a listbox, not of form fields
          <div key={group.heading} role="group" aria-label={group.heading}>
            <div className="picker-heading" aria-hidden="true">
              {group.heading}
            </div>
            {group.options.map((option) => {
              const index = options.indexOf(option);
              return (
                <div
                  key={option.value}
                  id={`${listId}-${index}`}
                  role="option"
                  tabIndex={-1}
                  aria-selected={index === at}
                  onPointerDown={(event) => {
                    event.preventDefault();
                    choose(option);
                  }}
                >
                  {option.name}
                </div>
              );
            })}
          </div>
        ))}
        {typed !== null && options.length === 0 && <p className="soft">{sayParts('noExercise')}</p>}
      </div>
    </div>
  );
}

function nameOf({ exercises }: SearchedCatalogue, inSession: readonly KnownChoice[], value: string): string {
  const id = inSession.find((known) => known.value === value)?.exercise ?? value;
  const known = exercises.find((exercise) => exercise.id === id);
  if (known !== undefined) return known.name;
  return id === '' ? '' : sayParts('notInLibrary', { id });
}

const isShipped = (pattern: string): pattern is keyof typeof patterns => Object.hasOwn(patterns, pattern);

/** The name of a pattern; a coach's own pattern has the one it was given. */
const headingOf = (pattern: string): string => (isShipped(pattern) ? sayPatterns(pattern) : capitalized(pattern));

/** The choices that answer what is typed: those of the session, then the library's, by pattern or the best match first. */
function groupsOf(catalogue: SearchedCatalogue, inSession: readonly KnownChoice[], typed: string): Group[] {
  const found = searchExercises(catalogue, typed);
  const option = ({ id, name }: (typeof found)[number]): Option => ({ value: id, name });
  const known = inSession
    .filter(({ exercise }) => typed.trim() === '' || found.some(({ id }) => id === exercise))
    .map(({ value }): Option => ({ value, name: nameOf(catalogue, inSession, value) }));
  const patterns = [...new Set(found.map(({ pattern }) => pattern))];
  const library =
    typed.trim() === ''
      ? patterns.map((pattern) => ({
          heading: headingOf(pattern),
          options: found.filter((exercise) => exercise.pattern === pattern).map(option),
        }))
      : [{ heading: sayParts('library'), options: found.map(option) }];
  return [{ heading: sayParts('inSession'), options: known }, ...library].filter(({ options }) => options.length > 0);
}

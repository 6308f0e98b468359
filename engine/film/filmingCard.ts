import type { FilmEffort } from '../cautions/filmEffort.ts';
import { type Block, type Inline, plainText, type RacksideDocument, strong, text } from '../document/document.ts';
import { tidy } from '../document/words.ts';
import { type Catalogue, findExercise } from '../exercises/catalogue.ts';
import type { Exercise } from '../exercises/exercise.ts';
import { blocksOf, type Letter } from '../letter/letter.ts';
import type { FilmMessageId } from '../wording/english/filming.ts';
import { filmWording, type Say, sayerOf } from '../wording/wordings.ts';

/** What keeps people safe while they film, and how to film well; each has its reason. */
const safety = ['path', 'catch', 'alone', 'pain', 'minors'] as const;
const advice = ['still', 'distance', 'lens', 'rate', 'light', 'disc', 'set', 'file', 'people'] as const;

/** Height at which the lens is level with what is judged. */
type LensHeight = 'hip' | 'bench' | 'chest';

const benchPatterns = new Set(['horizontal press', 'chest fly']);
const low = new Set(['squat', 'hinge', 'lunge', 'hip extension', 'sled press', 'calf raise', 'knee flexion', 'hold']);

/** Lens height for an exercise, by its movement pattern. */
function lensHeight({ pattern, id }: Exercise): LensHeight {
  if (benchPatterns.has(pattern) && !id.includes('push-up') && id !== 'dip' && !id.startsWith('cable')) return 'bench';
  return low.has(pattern) || id.includes('push-up') ? 'hip' : 'chest';
}

/** How to film one exercise. */
function exerciseLine(exercise: Exercise, say: Say<FilmMessageId>): Block {
  const line = [
    say('view', { view: exercise.bestView }),
    say('lensHeight', { height: lensHeight(exercise) }),
    say('hold', { turned: exercise.pattern.startsWith('horizontal') ? 'lengthways' : 'upright' }),
  ].join(' ');
  return {
    kind: 'paragraph',
    id: `film-${exercise.id}`,
    inlines: [strong(`${tidy(exercise.name)}.`), text(` ${line}`)],
  };
}

/** What a letter asks to be filmed next: its heading, and a sentence or two each. */
export type FilmAsks = { readonly title: string; readonly asks: readonly string[] };

/** What a card is made of. */
export type CardContent = {
  /** Exercises that the catalogue doesn't hold are left out. */
  readonly exerciseIds: readonly string[];
  /** ISO date. */
  readonly date: string;
  /** How hard a set it may ask for; null = it asks for none. */
  readonly effort: FilmEffort | null;
  /** What a letter asks for; stands first. */
  readonly asks?: FilmAsks;
};

const said = (what: string, why: string): Inline[] => [strong(what), text(` ${why}`)];

/**
 * A page for trainees on how to film: what is asked for, how nobody gets hurt, how to film well, and what each of some
 * exercises asks for. It speaks the language of the catalogue.
 */
export function filmingCard(
  { exerciseIds, date, effort, asks = { title: '', asks: [] } }: CardContent,
  catalogue: Catalogue,
): RacksideDocument {
  const { language = 'en' } = catalogue;
  const say = sayerOf(filmWording, language);
  const exercises = [...new Set(exerciseIds)].flatMap((id) => findExercise(catalogue, id) ?? []);
  const shown = advice.filter((about) => about !== 'set' || effort !== null);
  return {
    title: say('title'),
    language,
    author: '',
    date,
    blocks: [
      ...listUnder(
        { id: 'asks', title: asks.title },
        'asked',
        asks.asks.map((ask) => [text(ask)]),
      ),
      ...listUnder(
        { id: 'safety-title', title: say('safety') },
        'safety',
        safety.map((about) => said(say(`${about}What`), say(`${about}Why`))),
      ),
      ...listUnder(
        { id: 'advice-title', title: say('advice') },
        'advice',
        shown.map((about) => said(say(`${about}What`, { effort: effort ?? 'easy' }), say(`${about}Why`))),
      ),
      ...(exercises.length === 0
        ? []
        : [
            { kind: 'heading' as const, level: 2 as const, id: 'exercises', text: say('exercises') },
            ...exercises.map((exercise) => exerciseLine(exercise, say)),
          ]),
    ],
  };
}

/** A list under its heading; nothing without items. */
function listUnder(heading: { id: string; title: string }, id: string, items: Inline[][]): Block[] {
  if (items.length === 0) return [];
  return [
    { kind: 'heading', level: 2, id: heading.id, text: heading.title },
    { kind: 'list', id, ordered: false, items },
  ];
}

const headings = (block: Block) => (block.kind === 'heading' ? [block.text] : []);
const paragraphs = (block: Block) => (block.kind === 'paragraph' ? [plainText(block.inlines)] : []);

/** The asks of a letter in its words, the coach's where they wrote some; none where it doesn't ask. */
export function filmAsks(letter: Letter): FilmAsks {
  const film = blocksOf(letter, 'film');
  const [title = ''] = film.flatMap(headings);
  return { title, asks: film.flatMap(paragraphs) };
}

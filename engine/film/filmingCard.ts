import { type Block, plainText, type RacksideDocument, strong, text } from '../document/document.ts';
import { tidy } from '../document/words.ts';
import { type Catalogue, findExercise } from '../exercises/catalogue.ts';
import type { Exercise } from '../exercises/exercise.ts';
import { blocksOf, type Letter } from '../letter/letter.ts';
import type { FilmMessageId } from '../wording/english/filming.ts';
import { filmWording, type Say, sayerOf } from '../wording/wordings.ts';

/** The advice on how to film, in order; each has its reason. */
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

/**
 * A page for trainees on how to film, with what each of some exercises asks for; in the language of the catalogue.
 * Exercises that the catalogue doesn't hold are left out.
 */
export function filmingCard(exerciseIds: readonly string[], catalogue: Catalogue, date: string): RacksideDocument {
  const { language = 'en' } = catalogue;
  const say = sayerOf(filmWording, language);
  const exercises = [...new Set(exerciseIds)].flatMap((id) => findExercise(catalogue, id) ?? []);
  return {
    title: say('title'),
    language,
    author: '',
    date,
    blocks: [
      {
        kind: 'list',
        id: 'advice',
        ordered: false,
        items: advice.map((about) => [strong(say(`${about}What`)), text(` ${say(`${about}Why`)}`)]),
      },
      ...(exercises.length === 0
        ? []
        : [
            { kind: 'heading' as const, level: 2 as const, id: 'exercises', text: say('exercises') },
            ...exercises.map((exercise) => exerciseLine(exercise, say)),
          ]),
    ],
  };
}

/** A filming card that begins with what a letter asks for; unchanged if the letter asks for nothing. */
export function askingCard(card: RacksideDocument, { title, asks }: FilmAsks): RacksideDocument {
  if (asks.length === 0) return card;
  const first: readonly Block[] = [
    { kind: 'heading', level: 2, id: 'asks', text: title },
    { kind: 'list', id: 'asked', ordered: false, items: asks.map((ask) => [text(ask)]) },
  ];
  return { ...card, blocks: [...first, ...card.blocks] };
}

/** What a letter asks to be filmed next: its heading, and a sentence or two each. */
export type FilmAsks = { readonly title: string; readonly asks: readonly string[] };

const headings = (block: Block) => (block.kind === 'heading' ? [block.text] : []);
const paragraphs = (block: Block) => (block.kind === 'paragraph' ? [plainText(block.inlines)] : []);

/** The asks of a letter in its words, the coach's where they wrote some; none where it doesn't ask. */
export function filmAsks(letter: Letter): FilmAsks {
  const film = blocksOf(letter, 'film');
  const [title = ''] = film.flatMap(headings);
  return { title, asks: film.flatMap(paragraphs) };
}

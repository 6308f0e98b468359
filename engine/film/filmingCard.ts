import type { Block, RacksideDocument } from '../document/document.ts';
import { strong, text } from '../document/inlines.ts';
import { tidy } from '../document/tidy.ts';
import type { Catalogue } from '../exercises/catalogue.ts';
import type { Exercise } from '../exercises/exercise.ts';
import { findExercise } from '../exercises/lookUp.ts';
import { speechOf } from '../language/speech.ts';
import type { FilmAsks } from './filmAsks.ts';
import { type LensHeight, lensHeight } from './lensHeight.ts';

/** How to film: each with its reason. Common practice, and the geometry of pictures; see the tests for the figures. */
const advice: readonly (readonly [string, string])[] = [
  ['Stand the phone still.', 'On a stand, a shelf or a stack of discs: a camera that moves makes every line crooked.'],
  ['Three to five metres away.', 'Nearer, what is close looks too large. Leave a hand’s width free above and below.'],
  ['The main lens, no zoom beyond two times.', 'Wide lenses bend the edges of the picture.'],
  ['Sixty frames a second where the phone has them.', 'Thirty is the least; slow motion is fine too.'],
  ['Light from behind the camera.', 'A bright picture is a sharp one.'],
  ['The near disc in full view.', 'No post and nobody in front of it, from the first rep to the last.'],
  ['The hardest set, with its set-up and at least three reps.', 'Say the load, the set and how hard it was.'],
  ['Send the file itself.', 'What a chat has made smaller has lost frames and times.'],
  ['Nobody else in the picture.', 'Whoever can be seen has to agree; for a minor, a guardian.'],
];

const heights: Readonly<Record<LensHeight, string>> = {
  hip: 'Lens at the height of the hips at the deepest point, about knee height.',
  bench: 'Lens at the height of the bench.',
  chest: 'Lens at the height of the chest.',
};

const viewWords = {
  side: 'from the side, square to the way the weight goes',
  front: 'from the front',
  rear: 'from behind',
  oblique: 'from a front corner',
} as const;

/** What one exercise asks of the camera. */
function exerciseLine(exercise: Exercise, catalogue: Catalogue): Block {
  const { say } = speechOf(catalogue);
  const line = [
    say('Film {view}.', { view: say(viewWords[exercise.bestView]) }),
    say(heights[lensHeight(exercise)]),
    say(exercise.pattern.startsWith('horizontal') ? 'Hold the phone lengthways.' : 'Hold the phone upright.'),
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
  const { say } = speechOf(catalogue);
  const exercises = [...new Set(exerciseIds)].flatMap((id) => findExercise(catalogue, id) ?? []);
  return {
    title: say('How to film your lifts'),
    language: catalogue.language ?? 'en',
    author: '',
    date,
    blocks: [
      {
        kind: 'list',
        id: 'advice',
        ordered: false,
        items: advice.map(([what, why]) => [strong(say(what)), text(` ${say(why)}`)]),
      },
      ...(exercises.length === 0
        ? []
        : [
            { kind: 'heading' as const, level: 2 as const, id: 'exercises', text: say('Your exercises') },
            ...exercises.map((exercise) => exerciseLine(exercise, catalogue)),
          ]),
    ],
  };
}

/** A filming card that says first what a letter asks for; the card itself where it asks for nothing. */
export function askingCard(card: RacksideDocument, { title, asks }: FilmAsks): RacksideDocument {
  if (asks.length === 0) return card;
  const first: readonly Block[] = [
    { kind: 'heading', level: 2, id: 'asks', text: title },
    { kind: 'list', id: 'asked', ordered: false, items: asks.map((ask) => [text(ask)]) },
  ];
  return { ...card, blocks: [...first, ...card.blocks] };
}

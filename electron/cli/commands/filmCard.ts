import { type Command, Option } from 'commander';
import { translated } from '../../../engine/exercises/translated.ts';
import { filmingCard } from '../../../engine/film/filmingCard.ts';
import { type Language, languages } from '../../../engine/language/language.ts';
import { judgingDataOf } from '../../backend/catalogue/loadCatalogue.ts';
import { renderDocument } from '../../backend/documents/renderReviewDocument.ts';
import { writeWhole } from '../../backend/files/writeWhole.ts';
import { ProblemError } from '../../contract/reply.ts';
import { example } from '../example.ts';
import { chooseFormat } from '../exportDocument.ts';
import type { Host } from '../host.ts';
import { UsageError } from '../outcome.ts';

const formats = ['md', 'html', 'pdf', 'txt'] as const;
type Format = (typeof formats)[number];

type FilmCardOptions = {
  readonly exercise?: readonly string[];
  readonly format?: Format;
  readonly language: Language;
  readonly out?: string;
  readonly json?: true;
};

/** `film-card`: a page for trainees on how to film. */
export function addFilmCard(program: Command, host: Host): void {
  program
    .command('film-card')
    .description('Writes a page for trainees: how to film, and what each exercise asks of the camera.')
    .option('--exercise <ids...>', 'exercises of the library to say more about')
    .addOption(
      new Option('--format <format>', 'what to write (default: by the ending of FILE, else md)').choices(formats),
    )
    .addOption(new Option('--language <language>', 'the language it is written in').choices(languages).default('en'))
    .option('--out <file>', 'where to write it (default: standard output)')
    .option('--json', 'print what was written as JSON; the page itself within it where there is no --out')
    .addHelpText('after', example('rackside film-card --exercise back-squat deadlift --out filming.pdf'))
    .action(async ({ exercise = [], format: asked, language, out, json }: FilmCardOptions) => {
      const judging = judgingDataOf(host.appFolder);
      const catalogue = translated(judging.catalogue(judging.rubricVersions().at(-1)), language);
      const unknown = exercise.find((id) => !catalogue.exercises.some((one) => one.id === id));
      if (unknown !== undefined) {
        throw new ProblemError(
          'not-found',
          `The library holds no exercise "${unknown.slice(0, 60)}"; see "exercise list".`,
        );
      }
      const format = chooseFormat<Format>(formats, asked, out, 'md');
      if (format === 'pdf' && out === undefined) throw new UsageError('A PDF is no text: say where with --out FILE.');
      const bytes = await renderDocument(
        filmingCard(exercise, catalogue, new Date().toISOString().slice(0, 10)),
        format,
      );
      if (out === undefined) {
        host.print(json ? `${JSON.stringify({ format, content: new TextDecoder().decode(bytes) })}\n` : bytes);
        return;
      }
      await writeWhole(host.resolve(out), bytes);
      if (json) host.print(`${JSON.stringify({ format, file: host.resolve(out), bytes: bytes.length })}\n`);
      else host.say(`Wrote ${out} (${bytes.length} bytes).`);
    });
}

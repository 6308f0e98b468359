import type { Command } from 'commander';
import { generalFilmingCard } from '../../../engine/edition/generalFilmingCard.ts';
import { translated } from '../../../engine/exercises/catalogue.ts';
import type { Language } from '../../../engine/language/language.ts';
import { judgingDataOf } from '../../backend/catalogue/loadCatalogue.ts';
import { renderDocument } from '../../backend/documents/renderReviewDocument.ts';
import { writeWhole } from '../../backend/files/writeWhole.ts';
import { documentFormats } from '../../contract/documents.ts';
import { localDay } from '../../contract/localDay.ts';
import { addDocumentOptions, chooseFormat, type DocumentFlags, languageOption } from '../options/documentOptions.ts';
import { example } from '../options/example.ts';
import type { Host } from '../run/host.ts';
import { UsageError } from '../run/outcome.ts';
import { requireExercise } from '../sources/fromCatalogue.ts';

type FilmCardFlags = DocumentFlags<(typeof documentFormats)[number]> & {
  readonly exercise?: readonly string[];
  readonly language: Language;
};

/** `how-to-film` (or `film-card`): a page for trainees on how to film. */
export function addFilmCard(program: Command, host: Host): void {
  const command = program
    .command('how-to-film')
    .alias('film-card')
    .description('Writes a page for trainees: how to film, and what to get into the picture for each exercise.')
    .option('--exercise <ids...>', 'exercises of the library to say more about');
  addDocumentOptions(command, {
    formats: documentFormats,
    noun: 'page',
    out: 'the file to write (default: standard output)',
  })
    .addOption(languageOption())
    .addHelpText('after', example('rackside how-to-film --exercise back-squat deadlift --out filming.pdf'))
    .action(async ({ exercise = [], language, ...flags }: FilmCardFlags) => {
      const { out, json } = flags;
      const judging = judgingDataOf(host.appFolder);
      const catalogue = translated(judging.catalogue(judging.rubricVersions().at(-1)), language);
      const ids = exercise.map((name) => requireExercise(catalogue, name, 'nothing was written').id);
      const format = chooseFormat(documentFormats, flags);
      if (format === 'pdf' && out === undefined) {
        throw new UsageError('A PDF is not text: name a file to write it to with --out FILE.');
      }
      const bytes = await renderDocument(generalFilmingCard(ids, catalogue, localDay(new Date())), format);
      if (out === undefined) {
        host.print(json ? `${JSON.stringify({ format, content: new TextDecoder().decode(bytes) })}\n` : bytes);
        return;
      }
      await writeWhole(host.resolve(out), bytes);
      if (json) host.print(`${JSON.stringify({ format, file: host.resolve(out), bytes: bytes.length })}\n`);
      else host.say(`Wrote ${out} (${bytes.length} bytes).`);
    });
}

import { ProblemError } from '../../contract/reply.ts';
import type { Handler } from './handler.ts';

export const getCatalogue: Handler<'catalogue.get'> = (context, { version }) => {
  const versions = context.rubricVersions();
  const asked = version ?? versions.at(-1);
  if (asked === undefined || !versions.includes(asked)) {
    throw new ProblemError('not-found', `There is no version ${asked} of the rubric here; nothing was changed.`);
  }
  const { rubric, exercises, cautions } = context.catalogue(asked);
  return { rubric, exercises: [...exercises], cautions: [...cautions], rubricVersions: [...versions] };
};

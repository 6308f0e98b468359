import type { Handler } from './handler.ts';

export const getCatalogue: Handler<'catalogue.get'> = (context) => {
  const { rubric, exercises, cautions } = context.catalogue();
  return { rubric, exercises: [...exercises], cautions: [...cautions] };
};

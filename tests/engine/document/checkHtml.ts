import { HtmlValidate } from 'html-validate';

const validator = new HtmlValidate({ extends: ['html-validate:standard'] });

/** What an HTML checker finds in a page, one line each. */
export async function htmlFaults(html: string): Promise<string[]> {
  const { results } = await validator.validateString(html);
  return results.flatMap(({ messages }) =>
    messages.map(({ line, ruleId, message }) => `${line} ${ruleId}: ${message}`),
  );
}

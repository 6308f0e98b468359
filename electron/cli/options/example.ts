/** The examples at the end of a help text. */
export function example(...lines: readonly string[]): string {
  return ['', lines.length > 1 ? 'Examples:' : 'Example:', ...lines.map((line) => `  ${line}`)].join('\n');
}

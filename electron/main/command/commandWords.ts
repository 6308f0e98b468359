/**
 * The words of a command among the program's arguments; null where a window is wanted. The script that stands for the command
 * asks for one by the environment.
 *
 * @param args the program's arguments, its own switches before `--`
 */
export function commandWords(
  args: readonly string[],
  environment: Readonly<Record<string, string | undefined>>,
): readonly string[] | null {
  if (environment.RACKSIDE_COMMAND !== '1') return null;
  const end = args.indexOf('--');
  return end === -1 ? [] : args.slice(end + 1);
}

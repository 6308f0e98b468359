import { expect, test } from 'vitest';
import { commandWords } from '../../../../electron/main/command/commandWords.ts';

test('a start without the wish for a command is one for the window, whatever its arguments', () => {
  expect(commandWords(['/opt/rackside-desk', '--', 'probe', 'clip.mp4'], {})).toBeNull();
  expect(commandWords(['/opt/rackside-desk'], { RACKSIDE_COMMAND: '' })).toBeNull();
});

test("a command is what follows the runtime's own switches, to the letter", () => {
  const args = ['/opt/rackside-desk', '--ozone-platform=headless', '--', 'probe', '--json', '--', '-clip.mp4'];
  expect(commandWords(args, { RACKSIDE_COMMAND: '1' })).toEqual(['probe', '--json', '--', '-clip.mp4']);
  expect(commandWords(['/opt/rackside-desk', '--'], { RACKSIDE_COMMAND: '1' })).toEqual([]);
});

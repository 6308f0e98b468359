import { expect, it } from 'vitest';
import { messageOfText, textOfMessage } from '../../../../electron/backend/store/storedMessage.ts';
import { sayJob } from '../../../../engine/wording/sayJob.ts';

it('gives a message back, whatever its values hold', () => {
  const message = { id: 'noFrame', values: { clip: 'Set "1" {x}', frame: 12, reps: [1, 2] } };
  expect(messageOfText(textOfMessage(message))).toEqual(message);
});

it.each(['"set 1.mp4" is empty (0 bytes); choose another.', '{"id":broken', '{"id":"x","values":7}', ''])(
  'tells a sentence that was stored before as it was written: %s',
  (text) => {
    expect(sayJob(messageOfText(text), 'de')).toBe(text);
  },
);

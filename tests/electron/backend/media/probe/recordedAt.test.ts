import { describe, expect, it } from 'vitest';
import { readRecordedAt } from '../../../../../electron/backend/media/probe/recordedAt.ts';
import { readHeader } from '../../../../../electron/backend/media/probe/streams.ts';
import { localDay } from '../../../../../electron/contract/localDay.ts';

const nowMs = Date.UTC(2026, 10, 30, 12);

/** When a film with these tags says that it was made, on its container or on its stream. */
function recorded(tags: Readonly<Record<string, string>>, onStream: Readonly<Record<string, string>> = {}) {
  const header = readHeader(
    JSON.stringify({
      streams: [{ index: 0, codec_type: 'video', tags: onStream }],
      format: { format_name: 'mp4', tags },
    }),
  );
  const stream = header?.streams[0];
  if (header === null || stream === undefined) throw new Error('This is no header.');
  return readRecordedAt(header, stream, nowMs);
}

const wallClock = 'com.apple.quicktime.creationdate';

describe('when a film says that it was made', () => {
  it('is the wall clock where it was filmed, with the day there', () => {
    expect(recorded({ [wallClock]: '2026-11-28T00:30:11+0900', creation_time: '2026-11-27T15:30:11Z' })).toEqual({
      at: '2026-11-27T15:30:11.000Z',
      day: '2026-11-28',
    });
    expect(recorded({ [wallClock]: '2026-11-28T18:03:11-05:00' })).toEqual({
      at: '2026-11-28T23:03:11.000Z',
      day: '2026-11-28',
    });
  });

  it('is not a day that the calendar does not have', () => {
    expect(recorded({ [wallClock]: '2026-02-30T10:00:00+0100' })).toBeNull();
    expect(recorded({ creation_time: '2026-02-29T10:00:00.000000Z' })).toBeNull();
    expect(recorded({ creation_time: '2024-02-29T12:00:00Z' })?.at).toBe('2024-02-29T12:00:00.000Z');
  });

  it('is UTC where only that is told, on the container or the stream, with the day here', () => {
    const at = '2026-11-28T12:00:00.000Z';
    const told = { at, day: localDay(new Date(at)) };
    expect(recorded({ creation_time: '2026-11-28T12:00:00.000000Z' })).toEqual(told);
    expect(recorded({}, { creation_time: '2026-11-28T12:00:00Z' })).toEqual(told);
  });

  it.each([
    ['nothing', {}],
    ['a clock that was never set', { creation_time: '1904-01-01T00:00:00.000000Z' }],
    ['a day to come', { creation_time: '2031-01-01T00:00:00Z' }],
    ['no date at all', { creation_time: 'yesterday', [wallClock]: '0000-00-00T00:00:00+0000' }],
  ])('is not known from %s', (_what, tags) => {
    expect(recorded(tags)).toBeNull();
  });
});

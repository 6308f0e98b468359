import { expect, it } from 'vitest';
import { changeFraming } from '../../../../renderer/review/commands/framing.ts';
import { framingState } from '../../../../renderer/review/state/framingState.ts';
import { reviewBench } from '../../harness/reviewBench.ts';

it('keeps what is moved on while a change is being saved, to be saved next', async () => {
  const bench = await reviewBench({
    answers: {
      'clips.frame': () => {
        framingState.setState({ brightness: 1.2 });
        return {};
      },
    },
  });
  framingState.setState({ brightness: 1.1 });
  await changeFraming(bench.context, { brightness: 1.1 });
  expect(framingState.getState().brightness).toBe(1.2);
});

it('lets go of what was saved', async () => {
  const bench = await reviewBench({ answers: { 'clips.frame': () => ({}) } });
  framingState.setState({ brightness: 1.1 });
  await changeFraming(bench.context, { brightness: 1.1 });
  expect(framingState.getState()).toMatchObject({ brightness: null, open: null });
});

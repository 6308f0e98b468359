import { inputAt, numbersIn, type Operation } from './conversion.ts';

/** Beyond the end of any axis. */
const toTheEnd = 2 ** 31 - 1;

/**
 * A part of a value, as TensorFlow's `StridedSlice` cuts it: bit `i` of a mask says that entry `i` begins at the start, ends at
 * the end, is one place whose axis goes, or is a new axis. Throws for an ellipsis, which no network here has.
 */
export const slice: Operation = (conversion, node, inputs) => {
  const { graph, channelsLast, give } = conversion;
  const [begins, ends, steps] = [1, 2, 3].map((index) => numbersIn(conversion, inputs[index]));
  if (!begins || !ends || !steps) throw new Error(`${node.name} lacks its bounds`);
  const isSet = (mask: string, entry: number) => (((node.attr[mask]?.i ?? 0) >> entry) & 1) === 1;
  if ((node.attr.ellipsis_mask?.i ?? 0) !== 0) throw new Error('an ellipsis is not known');

  const cuts: { readonly begin: number; readonly end: number; readonly step: number }[] = [];
  const single: number[] = [];
  const added: number[] = [];
  let axesLeft = 0;
  begins.forEach((begin, entry) => {
    if (isSet('new_axis_mask', entry)) {
      added.push(axesLeft);
      axesLeft += 1;
    } else if (isSet('shrink_axis_mask', entry)) {
      single.push(cuts.length);
      cuts.push({ begin, end: begin === -1 ? toTheEnd : begin + 1, step: 1 });
    } else {
      axesLeft += 1;
      cuts.push({
        begin: isSet('begin_mask', entry) ? 0 : begin,
        end: isSet('end_mask', entry) ? toTheEnd : (ends[entry] ?? toTheEnd),
        step: steps[entry] ?? 1,
      });
    }
  });

  let part = channelsLast(inputAt(inputs, 0));
  if (cuts.length > 0) {
    const bounds = [
      cuts.map(({ begin }) => begin),
      cuts.map(({ end }) => end),
      cuts.map((_, axis) => axis),
      cuts.map(({ step }) => step),
    ];
    part = graph.add('Slice', [part, ...bounds.map(graph.places)]);
  }
  if (single.length > 0) part = graph.add('Squeeze', [part, graph.places(single)]);
  if (added.length > 0) part = graph.add('Unsqueeze', [part, graph.places(added)]);
  give(node, part);
};

import { inputAt, numbersIn, type Operation, type Operations } from './conversion.ts';
import { type ElementType, elementType } from './onnxGraph.ts';

/** An operation on the numbers of one value, whatever their order. */
const onEach =
  (operation: string): Operation =>
  ({ graph, value, give, keepSize }, node, inputs) => {
    const { name, channels } = value(inputAt(inputs, 0));
    keepSize(node);
    give(node, graph.add(operation, [name]), channels);
  };

/** An operation on several values, number by number. Their channels stay first only where all have them so or are one number. */
const onAll =
  (operation: string): Operation =>
  ({ graph, constant, value, channelsLast, give, keepSize }, node, inputs) => {
    const values = inputs.map(value);
    const canStay = inputs.every((input, i) => values[i]?.channels === 'first' || constant(input)?.data.length === 1);
    const stays = canStay && values.some(({ channels }) => channels === 'first');
    keepSize(node);
    const names = stays ? values.map(({ name }) => name) : inputs.map(channelsLast);
    give(node, graph.add(operation, names), stays ? 'first' : 'last');
  };

const sourceTypes: Readonly<Record<string, ElementType>> = {
  DT_FLOAT: 'float32',
  DT_INT32: 'int32',
  DT_INT64: 'int64',
  DT_BOOL: 'bool',
};

const cast: Operation = ({ graph, value, give, keepSize }, node, inputs) => {
  const type = sourceTypes[node.attr.DstT?.type ?? ''];
  if (type === undefined) throw new Error(`${node.attr.DstT?.type} is not known`);
  const { name, channels } = value(inputAt(inputs, 0));
  keepSize(node);
  give(node, graph.add('Cast', [name], { to: elementType[type] }), channels);
};

const squaredDifference: Operation = ({ graph, channelsLast, give }, node, inputs) => {
  const difference = graph.add('Sub', inputs.map(channelsLast));
  give(node, graph.add('Mul', [difference, difference]));
};

const greatest: Operation = (conversion, node, inputs) => {
  const axes = numbersIn(conversion, inputs[1]);
  const settings = { axes, keepdims: node.attr.keep_dims?.b ? 1 : 0 };
  conversion.give(node, conversion.graph.add('ReduceMax', [conversion.channelsLast(inputAt(inputs, 0))], settings));
};

const sum: Operation = (conversion, node, inputs) => {
  const { graph, channelsLast, give } = conversion;
  const axes = graph.places(numbersIn(conversion, inputs[1]));
  const settings = { keepdims: node.attr.keep_dims?.b ? 1 : 0 };
  give(node, graph.add('ReduceSum', [channelsLast(inputAt(inputs, 0)), axes], settings));
};

/** Operations on numbers that leave them where they are, and sums over them. */
export const arithmetic: Operations = {
  Cast: cast,
  Sigmoid: onEach('Sigmoid'),
  Abs: onEach('Abs'),
  Exp: onEach('Exp'),
  Sqrt: onEach('Sqrt'),
  Reciprocal: onEach('Reciprocal'),
  AddV2: onAll('Add'),
  AddN: onAll('Sum'),
  Sub: onAll('Sub'),
  Mul: onAll('Mul'),
  RealDiv: onAll('Div'),
  // Of whole numbers, none of them below 0: both cut the rest off.
  FloorDiv: onAll('Div'),
  Maximum: onAll('Max'),
  Minimum: onAll('Min'),
  Less: onAll('Less'),
  Greater: onAll('Greater'),
  GreaterEqual: onAll('GreaterOrEqual'),
  Equal: onAll('Equal'),
  LogicalAnd: onAll('And'),
  Select: onAll('Where'),
  SquaredDifference: squaredDifference,
  Max: greatest,
  Sum: sum,
};

type ChoiceProps = {
  readonly group: string;
  readonly title: string;
  readonly words: string;
  readonly chosen: boolean;
  readonly onChoose: () => void;
};

/** One of a few ways to go on, with what it means. */
export function Choice({ group, title, words, chosen, onChoose }: ChoiceProps) {
  return (
    <label className="choice">
      <input type="radio" name={group} checked={chosen} onChange={onChoose} />
      <span>
        <strong>{title}</strong>
        <span className="soft">{words}</span>
      </span>
    </label>
  );
}

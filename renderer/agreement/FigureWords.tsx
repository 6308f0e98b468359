const figures: readonly { readonly name: string; readonly means: string }[] = [
  {
    name: 'Moment',
    means: 'One criterion on one rep that both looked at; its weight is the heaviest of its flags there.',
  },
  {
    name: 'Same',
    means: 'How many moments got the same weight. Easy to read, but two who flag little agree by chance.',
  },
  {
    name: 'Kappa',
    means: 'Agreement beyond chance: 1 is always, 0 is no better than chance. Low when one weight is rare.',
  },
  {
    name: 'Kappa, quadratic',
    means: 'The same, but prefer against adjust counts as a smaller difference than prefer against stop.',
  },
  { name: 'AC1', means: 'Agreement beyond chance that holds its value when nearly everything is fine.' },
  {
    name: 'Alpha, ordinal',
    means: 'Agreement on the order of the weights. From 0.80 on, it is commonly called reliable.',
  },
  {
    name: 'ICC(2,1) of scores',
    means: 'How alike the scores of the reps are, point for point, not only in their order.',
  },
];

/** What each figure says, in plain words. */
export function FigureWords() {
  return (
    <details className="figure-words">
      <summary>What the figures mean</summary>
      <dl>
        {figures.map(({ name, means }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{means}</dd>
          </div>
        ))}
      </dl>
      <p className="soft">
        The smaller figures are 95 % intervals: with few moments they are wide, and where there is too little to tell,
        there is none. A single set says little; several sessions say more.
      </p>
    </details>
  );
}

import mark from '../pictures/mark.svg';

/** The product's mark and name: a card with its tally. */
export function NamePlate() {
  return (
    <span className="name-plate">
      <img src={mark} alt="" width={28} height={28} />
      Rackside
    </span>
  );
}

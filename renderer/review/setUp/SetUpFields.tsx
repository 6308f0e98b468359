import type { SetUp } from '../../../engine/recording/setUp.ts';
import { NumberField } from '../../base/fields.tsx';
import { plain } from '../../base/figures.ts';
import { changeSetUp } from '../commands/settingUp.ts';
import { setUpState } from '../state/setUpState.ts';

/** Diameter of the disc, the known length, and which way the lifter faces. */
export function SetUpFields({ setUp }: { readonly setUp: SetUp }) {
  const tool = setUpState((state) => state.tool);
  const lengthM = setUpState((state) => state.lengthM);
  return (
    <div className="set-up-fields">
      <CentimetreField
        label="Disc diameter"
        metres={setUp.discDiameterM}
        onSave={(discDiameterM) => void changeSetUp({ discDiameterM })}
      />
      <label className="field-inline">
        <span>Faces</span>
        <select
          value={setUp.facing ?? ''}
          onChange={({ target: { value } }) =>
            void changeSetUp({ facing: value === 'left' || value === 'right' ? value : null })
          }
        >
          <option value="">as the joints tell</option>
          <option value="left">left in the picture</option>
          <option value="right">right in the picture</option>
        </select>
      </label>
      {tool === 'length' && (
        <CentimetreField
          label="Length to point out"
          metres={lengthM}
          onSave={(metres) => setUpState.setState({ lengthM: metres })}
        />
      )}
    </div>
  );
}

type CentimetreFieldProps = {
  readonly label: string;
  readonly metres: number;
  readonly onSave: (metres: number) => void;
};

/** A length typed in centimetres, 1-500. */
function CentimetreField({ label, metres, onSave }: CentimetreFieldProps) {
  return (
    <NumberField
      label={label}
      unit="cm"
      shown={plain(metres * 100)}
      accepts={(centimetres) => centimetres >= 1 && centimetres <= 500}
      onSave={(centimetres) => onSave(centimetres / 100)}
    />
  );
}

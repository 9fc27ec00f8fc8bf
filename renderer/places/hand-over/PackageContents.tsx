import { type ReactElement } from 'react';
import { BUILT_KINDS, type PackageKind } from '../../../core/package/index.ts';
import { say } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { useStore } from '../../project/store.ts';
import { type Units } from '../../worker/protocol.ts';

export interface PackageContentsProps {
  readonly kinds: readonly PackageKind[];
  readonly onKinds: (kinds: readonly PackageKind[]) => void;
  /** null: the project's own. */
  readonly units: Units | null;
  readonly onUnits: (units: Units | null) => void;
}

const UNITS: readonly Units[] = ['in', 'mm'];

/** The kinds of files that the package is to hold, and the units in which they are written. */
export function PackageContents({ kinds, onKinds, units, onUnits }: PackageContentsProps): ReactElement {
  const { worked } = useDeskWindow();
  const own = useStore(worked).laid?.units ?? 'in';
  const turn = (kind: PackageKind): void => {
    onKinds(BUILT_KINDS.filter((other) => (other === kind ? !kinds.includes(kind) : kinds.includes(other))));
  };
  return (
    <section aria-labelledby="hand-over-holds">
      <h2 id="hand-over-holds">{say('place-hand-over.holds')}</h2>
      <ul className="hand-over-kinds">
        {BUILT_KINDS.map((kind) => (
          <li key={kind}>
            <label>
              <input type="checkbox" checked={kinds.includes(kind)} onChange={() => { turn(kind); }} />
              <span>
                <strong>{say(`place-hand-over.kind.${kind}`)}</strong>
                <small className="faint">{say(`place-hand-over.kind-help.${kind}`)}</small>
              </span>
            </label>
          </li>
        ))}
      </ul>
      <p className="faint">{say('place-hand-over.always')}</p>
      <fieldset className="hand-over-units">
        <legend>{say('place-hand-over.units')}</legend>
        {UNITS.map((unit) => (
          <label key={unit}>
            <input type="radio" name="hand-over-units" checked={(units ?? own) === unit} onChange={() => { onUnits(unit === own ? null : unit); }} />
            <span>{say(`window.block.${unit}`)}{unit === own ? <small className="faint"> {say('place-hand-over.own-units')}</small> : null}</span>
          </label>
        ))}
      </fieldset>
    </section>
  );
}

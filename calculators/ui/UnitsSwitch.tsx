import type { UnitSystem } from '../units/units.ts';

interface UnitsSwitchProps {
  readonly system: UnitSystem;
  readonly isOff?: boolean;
  readonly onSystem: (system: UnitSystem) => void;
}
/** From one system of units to the other. What was typed stays: each text names the unit that it was typed under. */
export const UnitsSwitch = ({ system, isOff = false, onSystem }: UnitsSwitchProps) => (
  <button type="button" class="quiet units" disabled={isOff} onClick={() => onSystem(system === 'us' ? 'si' : 'us')}>
    {system === 'us' ? 'In metric' : 'In inches, acres and pounds'}
  </button>
);

/** Which devices are sized in which system, and what values a system can have. */
import type { Device, System } from '../../sizes/model.ts';

const FRENCH: readonly Device[] = [
  'catheter',
  'urinary-catheter',
  'suction-catheter',
  'feeding-tube',
  'chest-tube',
  'drain',
  'central-line',
  'sheath',
  'guiding-catheter',
  'double-lumen-tube',
  'dilator',
];

/** Systems that are no plain length. */
type Named = Exclude<System, 'millimetre' | 'inch'>;

/** A device that stands under two systems is usually sized in the first of them. */
const DEVICES_OF: Readonly<Record<Named, readonly Device[]>> = {
  'needle-gauge': ['needle', 'winged-set', 'cannula'],
  usp: ['suture', 'suture-needle'],
  'ep-metric': ['suture', 'suture-needle'],
  french: FRENCH,
  'tube-id': ['tracheal-tube'],
  'wire-inch': ['guidewire'],
  'wire-gauge': ['steel-wire'],
  hegar: ['dilator'],
};

const SYSTEM_OF: ReadonlyMap<Device, System> = new Map(
  (Object.entries(DEVICES_OF) as [Named, readonly Device[]][])
    .reverse()
    .flatMap(([system, devices]) => devices.map((device) => [device, system] as const)),
);

/** The system a device is usually sized in. */
export const systemOf = (device: Device): System | undefined => SYSTEM_OF.get(device);

/** Devices a size of this system may be written on; a length fits any. */
export function fits(system: System, device: Device): boolean {
  if (system === 'millimetre' || system === 'inch') return true;
  if (system === 'needle-gauge' && device === 'catheter') return false;
  return DEVICES_OF[system].includes(device);
}

const BOUNDS: Readonly<Record<System, readonly [number, number]>> = {
  usp: [-19, 10],
  'ep-metric': [0.01, 12],
  'needle-gauge': [7, 60],
  'wire-gauge': [7, 40],
  french: [0.3, 99],
  millimetre: [0.001, 400],
  inch: [0.001, 60],
  'wire-inch': [0.008, 0.1],
  'tube-id': [2, 12],
  hegar: [1, 30],
};

/** Widest tracheal tube of a horse or a cow, mm. */
export const WIDEST_TUBE = 40;

/** Widest of a person, mm. */
const WIDEST_OF_PEOPLE = 11;

/** A tracheal tube of a large animal. */
export const ofLargeAnimal = (system: System, value: number): boolean =>
  system === 'tube-id' && value > WIDEST_OF_PEOPLE && value <= WIDEST_TUBE;

export const plausible = (system: System, value: number): boolean =>
  value >= BOUNDS[system][0] && value <= BOUNDS[system][1];

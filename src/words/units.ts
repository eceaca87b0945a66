import type { Unit } from '#lib/quantities/unit.ts';
import { fixed } from './number.ts';

/** Units beyond the site's own that printed checks are in. */
export type PrintedUnit = Unit | 'nm' | 'l/min' | 'mg/l';

/**
 * What stands after a number; nothing for a plain number. A degree sign and a percent sign follow as usage
 * has it.
 */
function unitAfter(unit: PrintedUnit): string {
  if (unit === '1') return '';
  return unit === '°' ? '°' : `\u00a0${unit}`;
}

/** The unit in full, for reading aloud. */
export const unitInFull = {
  mm: 'millimetres',
  cm: 'centimetres',
  'mm²': 'square millimetres',
  '°': 'degrees',
  '%': 'per cent',
  '1': '',
  people: 'people',
  drops: 'drops',
  minutes: 'minutes',
  hours: 'hours',
  days: 'days',
  'cm⁻¹': 'per centimetre',
  'g/l': 'grams a litre',
  'g/mol': 'grams a mole',
  'mg/cm²': 'milligrams a square centimetre',
  weeks: 'weeks',
  months: 'months',
  years: 'years',
  K: 'kelvin',
  lx: 'lux',
  nm: 'nanometres',
  'l/min': 'litres a minute',
  'mg/l': 'milligrams a litre',
} as const satisfies Readonly<Record<PrintedUnit, string>>;

/** As many decimals as the number was written with, at most five. */
export function decimalsOf(value: number): number {
  const text = String(value);
  return text.includes('e') ? 5 : Math.min(5, text.split('.')[1]?.length ?? 0);
}

/**
 * A number with its unit, as written in its source: 1.8 mm, 23 %, 4.3°. Thousands are parted by a thin space.
 */
export function withUnit(value: number, unit: PrintedUnit, decimals = decimalsOf(value)): string {
  const [whole = '', part] = fixed(value, decimals).split('.');
  const parted = whole.replace(/\B(?=(\d{3})+$)/g, '\u202f') + (part === undefined ? '' : `.${part}`);
  return parted + unitAfter(unit);
}

import { fixed } from '../number.ts';
import type { StepValues } from './problemWords.ts';

/** A number with no more decimals than it needs: 33, 33.5, 33.25. */
export function short(value: number, most = 2): string {
  const text = fixed(value, most);
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

/** A step's value in words. A missing one is a fault in the program, found by the tests of every seed. */
export function say(values: StepValues, key: string, most = 2): string {
  const value = values[key];
  if (value === undefined) throw new Error(`A step speaks of "${key}", which it was not given.`);
  return typeof value === 'number' ? short(value, most) : value;
}

/** A step's number with exactly one decimal, as the answer is asked for. */
export function sayTenths(values: StepValues, key: string): string {
  const value = values[key];
  if (typeof value !== 'number')
    throw new Error(`A step speaks of the number "${key}", which it was not given.`);
  return fixed(value, 1);
}

/** Keeps a number on one line with its unit, and with the axis of colour before it. */
export function tied(text: string): string {
  return text.replace(/(\d) (mm|°|%)/g, '$1\u00A0$2').replace(/([Lab]\*) (?=[+−]?\d)/g, '$1\u00A0');
}

import { expect, test } from 'vitest';
import { isNear, namesOneOf } from '#components/site/isNear.ts';

test.each([
  ['levelling', 'Level'],
  ['noses', 'the nose.'],
  ['sidak', 'Šidák'],
  ['mm', '3 mm'],
  ['glabela', 'glabella'],
  ['level zyzzyva', 'levels'],
  ['95', '95 %'],
  ['client’s left', 'client'],
])('[hand] “%s” is near “%s”', (asked, found) => expect(isNear(asked, found)).toBe(true));

test.each([
  ['zyzzyva', 'Z'],
  ['zyzzyva', 'Z zone'],
  ['mm', 'm'],
  ['<b>', 'a'],
  ['…', 'level'],
  ['', 'level'],
  ['level', ''],
])('[hand] “%s” is not near “%s”', (asked, found) => expect(isNear(asked, found)).toBe(false));

test.each([
  ['passed out', true],
  ['She passed out!', true],
  ['passed o', true],
  ['fain', true],
  ['fai', false],
  ['pigment', false],
  ['pigment in', true],
  ['pigment in her eye', false],
  ['out', false],
  ['', false],
])('[hand] “%s” asks for one of the phrases: %s', (asked, expected) => {
  expect(namesOneOf(asked, ['passed out', 'faint', 'pigment in eye', ' '])).toBe(expected);
});

import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const read = (file: string) => readFileSync(new URL(`../../${file}`, import.meta.url), 'utf8');
const lesson = (name: string) => read(`content/lessons/mapping/${name}.mdx`);

test('[hand] no page says that a brow sinks when she lies down: two lessons print that its tail rose', () => {
  expect(lesson('rest-raised-lying')).toContain('the tail of the brow rose');
  for (const name of ['how-unequal-is-usual', 'rest-raised-lying', 'midline-when-the-nose-leans', 'approve-and-measure-again']) expect(lesson(name), name).not.toMatch(/sinks? when she lies/);
  expect(lesson('how-unequal-is-usual')).toContain('moves when she lies down');
});

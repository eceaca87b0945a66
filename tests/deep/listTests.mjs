import { expect } from 'vitest';

// Stands for vitest in the tests that oneProcess.mjs reads: the same `expect`, and tests are listed.

let tests = new Map();
let file = '';
let parents = [];

/** Begins a list; `startList.file` says whose tests come next. */
export function startList() {
  tests = new Map();
}
startList.file = (name) => {
  file = name;
};
export const listed = () => tests;

const add = (title, run) => {
  const name = [file, ...parents, title].join(' > ');
  let id = name;
  for (let i = 2; tests.has(id); i++) id = `${name} (${i})`;
  tests.set(id, { run });
};
const group = (title, list) => {
  parents = [...parents, title];
  list();
  parents = parents.slice(0, -1);
};
const argumentsOf = (row) => (Array.isArray(row) ? row : [row]);
const eachOf = (one) => (rows) => (title, run) => {
  for (const row of rows) one(title, () => run(...argumentsOf(row)));
};

const test = Object.assign((title, run) => add(title, run), { each: eachOf(add) });
const describe = Object.assign((title, list) => group(title, list), { each: eachOf(group) });
export { describe, expect, test, test as it };

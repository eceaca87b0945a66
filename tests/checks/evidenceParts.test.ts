import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { checks, checksOf } from '#checks/index.ts';
import { factsOfSubject, methodIds, sourceIds, subjectsOfSource } from '#checks/uses.ts';
import { factIds, factOf, isFactId, isMethodOf, subjectOfFact, subjects } from '#lib/catalogue.ts';
import { evidenceAddress } from '#words/evidenceAddress.ts';

const root = new URL('../../', import.meta.url);

it('[property] every fact, check and method belongs to one subject, every source to those that cite it', () => {
  expect(subjects.flatMap((subject) => factsOfSubject(subject)).toSorted()).toEqual(factIds.toSorted());
  expect(subjects.flatMap((subject) => checksOf[subject].map(({ id }) => id)).toSorted()).toEqual(
    checks.map(({ id }) => id).toSorted(),
  );
  for (const id of methodIds)
    expect(
      subjects.filter((subject) => isMethodOf(subject, id)),
      id,
    ).toHaveLength(1);
  expect(sourceIds.filter((id) => subjectsOfSource(id).length === 0)).toEqual([]);
});

it('[hand] a fact has its address in the part of its subject; a table that two subjects use is in both parts', () => {
  expect(evidenceAddress('few-see-mm')).toBe('/evidence/mapping/#few-see-mm');
  expect(evidenceAddress('ita-light-above-deg')).toBe('/evidence/colour/#ita-light-above-deg');
  expect(evidenceAddress('faint-lie-down')).toBe('/evidence/first-aid/#faint-lie-down');
  expect(evidenceAddress('space-practice-out')).toBe('/evidence/practice/#space-practice-out');
  expect(subjectsOfSource('nist-t-table')).toEqual(['mapping', 'colour']);
  expect(subjectsOfSource('sharma-2005')).toEqual(['colour']);
});

it('[property] facts that are computed come from facts of the same part, as its page says', () => {
  const across = factIds.filter((id) => {
    const { backing } = factOf(id);
    return (
      backing.status === 'computed' &&
      backing.from.some((from) => isFactId(from) && subjectOfFact(from) !== subjectOfFact(id))
    );
  });
  expect(across).toEqual([]);
});

it('[hand] nothing else in the code or the content writes an address of the evidence', () => {
  const wrong = ['src', 'components', 'content'].flatMap((folder) =>
    readdirSync(new URL(`${folder}/`, root), { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.(ts|tsx|astro|mdx?)$/.test(name))
      .map((name) => `${folder}/${name.replaceAll('\\', '/')}`)
      .filter((file) => /["'`(]\/evidence\/[#a-z$]/.test(readFileSync(new URL(file, root), 'utf8'))),
  );
  expect(wrong).toEqual([]);
});

import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { islandName } from '#components/practice/islandName.ts';
import { skills } from '#skills/index.ts';

const folder = fileURLToPath(new URL('../../components/practice/islands/', import.meta.url));
const hasIsland = (name: string): boolean => existsSync(`${folder}${name}.tsx`);

/**
 * A component that shows the island of one skill by its id, for every skill of the list. Astro wants each island
 * imported and named with its directive in a page's own text, so this text is written before the pages are read.
 */
export function skillIslands(ids: readonly string[] = Object.keys(skills), has = hasIsland): string {
  const islands = ids.map((id) => ({ id, name: islandName(id) }));
  const missing = islands.filter(({ name }) => !has(name));
  if (missing.length > 0)
    throw new Error(
      `No picture and island: ${missing.map(({ id, name }) => `"${id}" wants components/practice/islands/${name}.tsx`).join('; ')}.`,
    );
  return [
    '---',
    '// Written by src/build/skillIslands.ts from src/skills/index.ts.',
    "import type { ProblemSettings } from '#components/practice/bound.ts';",
    ...islands.map(({ name }) => `import ${name} from '#components/practice/islands/${name}.tsx';`),
    'type Props = ProblemSettings & Readonly<{ id: string }>;',
    'const { id, ...settings } = Astro.props;',
    '---',
    ...islands.map(({ id, name }) => `{id === '${id}' && <${name} {...settings} client:visible />}`),
    '',
  ].join('\n');
}

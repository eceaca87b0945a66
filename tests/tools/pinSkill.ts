import { writeFileSync } from 'node:fs';
import { pinFile, pinFault, pinned, pinOf, readPin } from '#tests/tools/skillPins.ts';

/**
 * Writes the pins of the skills named: `node tests/tools/pinSkill.ts tilt ita`. Only for a new skill, or for one whose version
 * has counted up by one.
 */
for (const id of process.argv.slice(2)) {
  const skill = pinned.find((one) => one.id === id);
  if (!skill) throw new Error(`There is no skill "${id}". Known: ${pinned.map((one) => one.id).join(', ')}.`);
  const pin = readPin(id);
  const now = pinOf(skill);
  const isNext = pin === undefined || now.version === pin.version + 1;
  if (isNext) writeFileSync(pinFile(id), `${JSON.stringify(now, undefined, 2)}\n`);
  console.log(
    isNext ? `${id}: version ${now.version} pinned` : (pinFault(id, pin, now) ?? `${id}: nothing to write`),
  );
  if (!isNext && pinFault(id, pin, now)) process.exitCode = 1;
}

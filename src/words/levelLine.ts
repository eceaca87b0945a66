import type { TiltBehind } from '#lib/mapping/level/tiltBehind.ts';
import { fixed } from './number.ts';

type Result = Readonly<{
  fakedMm: number;
  endMm: number;
  realMm: number;
  holdWithin: TiltBehind;
  holdWithinEndMm: number;
  behindSeen: TiltBehind;
}>;
type State = Readonly<{ tilt: number; span: number; seen: number; hands: number }>;

/** A length with no more decimals than it needs: 82 or 82.5. */
const length = (mm: number) => fixed(mm).replace(/\.0$/, '');

/** What the figure of the level line says. */
export function levelLineSays(
  result: Result,
  { tilt, span, seen, hands }: State,
): Readonly<{ answer: string; doubt: string }> {
  const { fakedMm, realMm, holdWithin, holdWithinEndMm, behindSeen } = result;
  const enough =
    fakedMm > realMm
      ? 'so this tilt alone would pass for a real difference'
      : 'so this tilt hides inside your reading error';
  const hold = holdWithin.ok
    ? ` Hold the line within ${fixed(holdWithin.tiltDeg)}°: one end of a ${length(hands)} mm thread at most ${fixed(holdWithinEndMm)} mm too high.`
    : '';
  const back =
    seen === 0
      ? ''
      : behindSeen.ok
        ? ` The ${fixed(seen)} mm you read could be a tilt of ${fixed(behindSeen.tiltDeg)}° and nothing else.`
        : ` No tilt makes ${fixed(seen)} mm over ${length(span)} mm.`;
  return {
    answer: `A line ${fixed(tilt)}° off level makes ${fixed(fakedMm)} mm over ${length(span)} mm.`,
    doubt: `Your smallest real difference is ${fixed(realMm, 2)} mm, ${enough}.${hold}${back}`,
  };
}

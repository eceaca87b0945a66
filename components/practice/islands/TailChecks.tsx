import { tailChecks } from '#skills/mapping/tailChecks.ts';
import { fixed } from '#words/number.ts';
import type { TailChecksGiven } from '#words/skills/tailChecks.ts';
import type { PictureProps, ProblemSettings } from '../bound.ts';
import { MmPaper } from '../pictures/MmPaper.tsx';
import { Problem } from '../Problem.tsx';

const farMm = 84;
const nearMm = 16;

/**
 * Half a face: wing, corner, front and tail. After marking: the tail line, the level band and how far out the
 * line stands.
 */
function TailSketch({ given, at, right }: PictureProps<TailChecksGiven>) {
  const { side, wing, corner, frontLower, frontTop, tail } = given;
  const way = side === 'right' ? -1 : 1;
  const x = (outMm: number) => way * outMm;
  const slope = (corner.outMm - wing.outMm) / (corner.upMm - wing.upMm);
  const lineAt = (upMm: number) => x(corner.outMm + slope * (upMm - corner.upMm));
  const isMarked = right !== undefined;
  const from = way < 0 ? -farMm : -nearMm;
  const names = [
    ['nose wing', wing],
    ['outer eye corner', corner],
    ['tail tip', tail],
  ] as const;
  const mark = (outMm: number, upMm: number) =>
    way < 0 ? (
      <rect class="d-r" x={x(outMm) - 1.3} y={-upMm - 1.3} width="2.6" height="2.6" />
    ) : (
      <circle class="d-l" cx={x(outMm)} cy={-upMm} r="1.45" />
    );
  return (
    <svg
      class="plot pic-wide"
      viewBox={`${from} -36 ${farMm + nearMm} 84`}
      role="img"
      aria-labelledby={`${at}-t`}
    >
      <title id={`${at}-t`}>
        {isMarked
          ? `The tail line stands ${fixed(Math.abs(lineAt(tail.upMm)))} mm out at the height of the tail tip, which ends at ${fixed(tail.outMm)} mm`
          : `Nose wing, outer eye corner, front and tail of the ${side} side; the readings are in the table`}
      </title>
      <MmPaper at={at} x={from} y={-36} width={farMm + nearMm} height={84} />
      <path class="d-thread" d="M0 -30V46" />
      <path
        class="dim"
        d={`M${x(frontLower.outMm)} ${-frontLower.upMm}L${x(frontTop.outMm)} ${-frontTop.upMm}Q${x(34)} ${-frontTop.upMm - 7} ${x(tail.outMm)} ${-tail.upMm}Q${x(38)} ${-frontLower.upMm - 6} ${x(frontLower.outMm)} ${-frontLower.upMm}`}
      />
      {isMarked && (
        <>
          <path
            class="d-ref"
            d={`M${x(frontLower.outMm)} ${-frontLower.upMm}H${x(76)}M${x(frontTop.outMm)} ${-frontTop.upMm}H${x(76)}`}
          />
          <path class="d-ref" d={`M${x(wing.outMm)} ${-wing.upMm}L${lineAt(28)} -28`} />
          <path class="range" d={`M${lineAt(tail.upMm)} ${-tail.upMm}H${x(tail.outMm)}`} />
          <text class="s b halo" x={lineAt(29)} y="-30" text-anchor="middle">
            line {fixed(Math.abs(lineAt(tail.upMm)))}
          </text>
        </>
      )}
      {mark(wing.outMm, wing.upMm)}
      {mark(corner.outMm, corner.upMm)}
      {mark(frontLower.outMm, frontLower.upMm)}
      {mark(frontTop.outMm, frontTop.upMm)}
      {mark(tail.outMm, tail.upMm)}
      {names.map(([name, { outMm, upMm }]) => (
        <text class="s halo" x={x(outMm)} y={-upMm + 6} text-anchor="middle">
          {name}
        </text>
      ))}
    </svg>
  );
}

export default function TailChecks(settings: ProblemSettings) {
  return <Problem skill={tailChecks} Picture={TailSketch} {...settings} />;
}

import type { PointMm } from '#lib/geometry/point.ts';
import { midpoint } from '#lib/geometry/distance.ts';
import { facePairs, faceSingles, type MarkSet } from '#lib/mapping/marks/markSet.ts';
import type { MidlineMark } from '#lib/mapping/marks/mirrorMarks.ts';

type Props = Readonly<{
  markSet: MarkSet;
  /** Draws each pair's line and middle too: the working of the answer. */
  middles?: boolean;
  notTrusted?: readonly MidlineMark[];
}>;

const place = ({ xMm, yMm }: PointMm) => `${xMm.toFixed(2)},${(-yMm).toFixed(2)}`;

/**
 * The midline's marks: square on the client's right, circle on the left, diamond for one that stands alone;
 * dashed when not trusted.
 */
export function FaceMarks({ markSet: { pairs, singles }, middles = false, notTrusted = [] }: Props) {
  const out = (mark: MidlineMark) => (notTrusted.includes(mark) ? ' d-out' : '');
  return (
    <g>
      {facePairs.map((mark) => {
        const { right, left } = pairs[mark];
        const middle = midpoint(right, left);
        return (
          <g key={mark}>
            {middles && <path class={`d-pair${out(mark)}`} d={`M${place(right)}L${place(left)}`} />}
            {middles && (
              <path
                class={`d-mid${out(mark)}`}
                d={`M${middle.xMm.toFixed(2)},${(-middle.yMm - 2).toFixed(2)}v4`}
              />
            )}
            <rect
              class={`d-r${out(mark)}`}
              x={right.xMm - 1.2}
              y={-right.yMm - 1.2}
              width="2.4"
              height="2.4"
            />
            <circle class={`d-l${out(mark)}`} cx={left.xMm} cy={-left.yMm} r="1.35" />
          </g>
        );
      })}
      {faceSingles.map((mark) => (
        <path
          key={mark}
          class={`d-m${out(mark)}`}
          d={`M${place({ xMm: singles[mark].xMm, yMm: singles[mark].yMm + 1.6 })}l1.6,1.6l-1.6,1.6l-1.6,-1.6z`}
        />
      ))}
    </g>
  );
}

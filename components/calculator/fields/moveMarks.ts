import type { PointMm } from '#lib/geometry/point.ts';
import type { State } from '#calculators/spec.ts';
import { type Desk, inside, isBeyond, isPoint } from '../frame/useCalculator.ts';

/** The ways to move a calculator's marks: to a place and by so much. */
export function moveMarks<S extends State, R>(desk: Desk<S, R>) {
  type Name = keyof S & string;
  const to = (name: Name, asked: PointMm) => {
    const { control } = desk.calculator.fields[name];
    const old = desk.now()[name];
    if (control.kind !== 'mark' || !isPoint(old)) return;
    const [xMm, yMm] = [
      inside(asked.xMm, control.x, control.decimals),
      inside(asked.yMm, control.y, control.decimals),
    ];
    const isStill = xMm === old.xMm && yMm === old.yMm;
    desk.change(name, isStill ? old : { xMm, yMm }, `${name}.x`, `${name}.y`);
    for (const axis of ['x', 'y'] as const) {
      const mm = asked[`${axis}Mm`];
      if (isBeyond(mm, control[axis])) desk.sayStop(`${name}.${axis}`, mm, control.decimals);
    }
  };
  return {
    to,
    by: (name: Name, { xMm, yMm }: PointMm) => {
      const from = desk.now()[name];
      if (isPoint(from)) to(name, { xMm: from.xMm + xMm, yMm: from.yMm + yMm });
    },
  };
}

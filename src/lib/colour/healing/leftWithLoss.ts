import { pigmentIds, type Factors } from '../pigment/pigments.ts';
import { leftOf, type Ageing, type AtYears } from './uncertainHealing.ts';

/**
 * What is left of each pigment when the loss is `times` the assumed one: the assumed share to that power, so
 * that 1 is as assumed, 2 loses as if everything had happened twice, 0 loses nothing, and nothing ever grows.
 */
export function leftWithLoss(ageing: Ageing, years: AtYears, times: number): Factors {
  const left = leftOf(ageing, years);
  return pigmentIds.reduce<Factors>((all, id) => ({ ...all, [id]: left[id] ** times }), {
    ...left,
    ownLeft: (left.ownLeft ?? 1) ** times,
  });
}

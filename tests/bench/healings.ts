import { skinOptics } from '#lib/colour/layers/skinOptics.ts';
import { startAgeing, startDoubts } from '#lib/colour/numbers/ageing.ts';
import { simulatedHealings, type Plan } from '#lib/colour/healing/uncertainHealing.ts';

const skin = skinOptics({ l: 54, a: 10, b: 18 });
const plan: Plan = {
  shares: { '77891': 0, '77492': 0.6, '77491': 0.3, '77499': 0.1, '77266': 0 },
  dose: 0.3,
  setting: { depthMm: 0.1, coverage: 0.6, veilShare: 0.35 },
  ageing: startAgeing,
  doubts: startDoubts,
};

/** 400 simulated healings of one brown, at six weeks. */
export function interval() {
  if (!skin.ok) throw new Error(skin.reason);
  return simulatedHealings(skin, plan, [0], 400, 1);
}

import { ciede2000 } from '../spaces/ciede2000.ts';
import { rangesOf, withoutWarm, type Predicted } from '../layers/darkPart.ts';
import { healedColour, throughParts, type Setting } from './healedColour.ts';
import type { Lab } from '../spaces/lab.ts';
import { hueDeg, hueStepDeg } from '../spaces/lch.ts';
import type { Lamp } from '../spectrum/lamps.ts';
import { spectrumToLab } from '../spectrum/observe.ts';
import { type Factors, mixLayer, type Shares } from '../pigment/pigments.ts';
import { partedAt, type SkinOptics } from '../layers/skinOptics.ts';
import { leftOf, ninetyOf, simulatedHealings, type Plan } from './uncertainHealing.ts';

/** One mix at one time: the plain prediction, and what many simulated healings say. */
export type Outlook = Readonly<{
  /** 0 stands for six weeks. */
  years: number;
  plain: Lab;
  /**
   * The twentieth darkest, a quarter, the middle, three quarters, and the twentieth lightest of the healings.
   */
  band: readonly Lab[];
  lightness: readonly [number, number];
  /** What the dark part alone would show if all yellow and red had gone first. */
  dark: Predicted;
  /** Share of healings whose hue lies 15° or more to the red, or to the green, of the plain prediction. */
  leanRed: number;
  leanGreen: number;
  /** The colour straight over the pigment, between bare skin: what one stroke shows. */
  covered: Lab;
}>;

export type MixOutlook = Readonly<{
  times: readonly Outlook[];
  /** The skin or old work as it is today, under the lamp. */
  today: Lab;
  /** How far the mix changes today's colour at six weeks, ΔE00. */
  changes: number;
}>;

const bandShares = [0.05, 0.25, 0.5, 0.75, 0.95] as const;
const lean = 15;

/** What becomes of a mix in a skin at several times, by a plain prediction and `draws` seeded healings. */
export function mixOutlook(
  skin: SkinOptics,
  plan: Plan,
  times: readonly number[],
  draws: number,
  seed: number,
  lamp: Lamp = 'D65',
): MixOutlook {
  const { shares, dose, setting, ageing } = plan;
  const healings = simulatedHealings(skin, plan, times, draws, seed, lamp);
  // Half as many draws for what is only printed as a range: the same first healings, with other pigments
  // left.
  const darkAgeing = withoutWarm(ageing);
  const darkHealings = simulatedHealings(
    skin,
    { ...plan, ageing: darkAgeing },
    times,
    Math.ceil(draws / 2),
    seed,
    lamp,
  );
  const parts = partedAt(skin, setting.depthMm, setting.veilShare);
  const colour = (years: number, coverage: number, factors: Factors = leftOf(ageing, years)) =>
    spectrumToLab(throughParts(skin, parts, mixLayer(shares, dose, factors), coverage), lamp);
  const today = spectrumToLab(skin.reflectance, lamp);
  const outlooks = times.map((years, time): Outlook => {
    const seen = healings.flatMap((one) => one[time] ?? []).toSorted((one, other) => one.l - other.l);
    const plain = colour(years, setting.coverage);
    const turn = (lab: Lab) => hueStepDeg(hueDeg(plain.a, plain.b), hueDeg(lab.a, lab.b));
    const share = (test: (lab: Lab) => boolean) => seen.filter(test).length / Math.max(1, seen.length);
    return {
      years,
      plain,
      band: bandShares.flatMap((at) => seen[Math.round(at * (seen.length - 1))] ?? []),
      lightness: ninetyOf(seen.map(({ l }) => l)),
      dark: {
        plain: colour(years, setting.coverage, leftOf(darkAgeing, years)),
        ranges: rangesOf(darkHealings.flatMap((one) => one[time] ?? [])),
      },
      leanRed: share((lab) => turn(lab) < -lean),
      leanGreen: share((lab) => turn(lab) > lean),
      covered: colour(years, 1),
    };
  });
  return { times: outlooks, today, changes: ciede2000(outlooks[0]?.plain ?? today, today) };
}

/** The colour of a fresh mix if all of it stayed: no loss. */
export function asPutIn(
  skin: SkinOptics,
  shares: Shares,
  dose: number,
  setting: Setting,
  lamp: Lamp = 'D65',
): Lab {
  return healedColour(skin, mixLayer(shares, dose), setting, lamp);
}

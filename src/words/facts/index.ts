import type { FactId } from '#lib/catalogue.ts';
import { seeingFactNames } from './mapping/seeing.ts';
import { midlineFactNames } from './mapping/midline.ts';
import { measuringFactNames } from './mapping/measuring.ts';
import { ownErrorFactNames } from './mapping/ownError.ts';
import { againFactNames } from './mapping/again.ts';
import { sizesFactNames } from './mapping/sizes.ts';
import { posesFactNames } from './mapping/poses.ts';
import { habitsFactNames } from './mapping/habits.ts';
import { placingFactNames } from './mapping/placing.ts';
import { outlineFactNames } from './mapping/outline.ts';
import { coverFactNames } from './mapping/cover.ts';
import { picturesFactNames } from './mapping/pictures.ts';
import { archFactNames } from './mapping/arch.ts';
import { underFactNames } from './mapping/under.ts';
import { practiceFactNames } from './practice.ts';
import { colourOpticsFactNames } from './colour/optics.ts';
import { colourHabitsFactNames } from './colour/habits.ts';
import { skinClassesFactNames } from './colour/skinClasses.ts';
import { skinMeasuredFactNames } from './colour/skinMeasured.ts';
import { skinDifferencesFactNames } from './colour/skinDifferences.ts';
import { skinReadingFactNames } from './colour/skinReading.ts';
import { colourCoverFactNames } from './colour/cover.ts';
import { colourStrokesFactNames } from './colour/strokes.ts';
import { colourHealedFactNames } from './colour/healed.ts';
import { colourLabelsFactNames } from './colour/labels.ts';
import { colourLampsFactNames } from './colour/lamps.ts';
import { firstAidWakingFactNames } from './firstAid/waking.ts';
import { firstAidFaintFactNames } from './firstAid/faint.ts';
import { firstAidAllergyFactNames } from './firstAid/allergy.ts';
import { firstAidNumbingFactNames } from './firstAid/numbing.ts';
import { firstAidEyeFactNames } from './firstAid/eye.ts';
import { firstAidExposureFactNames } from './firstAid/exposure.ts';

const gathered = {
  ...seeingFactNames,
  ...midlineFactNames,
  ...measuringFactNames,
  ...ownErrorFactNames,
  ...againFactNames,
  ...sizesFactNames,
  ...posesFactNames,
  ...habitsFactNames,
  ...placingFactNames,
  ...outlineFactNames,
  ...coverFactNames,
  ...picturesFactNames,
  ...archFactNames,
  ...underFactNames,
  ...practiceFactNames,
  ...colourOpticsFactNames,
  ...colourHabitsFactNames,
  ...skinClassesFactNames,
  ...skinMeasuredFactNames,
  ...skinDifferencesFactNames,
  ...skinReadingFactNames,
  ...colourCoverFactNames,
  ...colourStrokesFactNames,
  ...colourHealedFactNames,
  ...colourLabelsFactNames,
  ...colourLampsFactNames,
  ...firstAidWakingFactNames,
  ...firstAidFaintFactNames,
  ...firstAidAllergyFactNames,
  ...firstAidNumbingFactNames,
  ...firstAidEyeFactNames,
  ...firstAidExposureFactNames,
} as const;

/** What each fact is, in a few plain words. A fact without a name does not compile, nor a name without a fact. */
export const factNames = gathered satisfies Readonly<Record<FactId, string>> &
  Readonly<Partial<Record<Exclude<keyof typeof gathered, FactId>, never>>>;

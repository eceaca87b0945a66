import type { Source } from './source.ts';
import { colourSources } from './sources/colour.ts';
import { skinSources } from './sources/skin.ts';
import { conversionSources } from './sources/conversions.ts';
import { archSources } from './sources/arch.ts';
import { againSources } from './sources/again.ts';
import { healedSources } from './sources/healed.ts';
import { lampSources } from './sources/lamps.ts';
import { exposureSources } from './sources/exposure.ts';
import { eyeSources } from './sources/eye.ts';
import { faceSources } from './sources/faces.ts';
import { firstAidSources } from './sources/firstAid.ts';
import { pictureSources } from './sources/pictures.ts';
import { uncertaintySources } from './sources/uncertainty.ts';
import { technicalErrorSources } from './sources/technicalError.ts';
import { statisticsSources } from './sources/statistics.ts';
import { axesSources } from './sources/axes.ts';
import { seedSources } from './sources/seeds.ts';
import { angleSources } from './sources/angles.ts';
import { numbingSources } from './sources/numbing.ts';
import { outlineSources } from './sources/outline.ts';
import { placingSources } from './sources/placing.ts';
import { repeatingSources } from './sources/repeating.ts';
import { poseSources } from './sources/poses.ts';
import { underSources } from './sources/under.ts';
import { labelSources } from './sources/labels.ts';
import { strokeSources } from './sources/strokes.ts';
import { studySources } from './sources/study.ts';

/** Every source the site cites. Keys are first author and year, or a plain name where there is no author. */
export const bibliography = {
  ...faceSources,
  ...uncertaintySources,
  ...technicalErrorSources,
  ...statisticsSources,
  ...axesSources,
  ...seedSources,
  ...angleSources,
  ...placingSources,
  ...outlineSources,
  ...pictureSources,
  ...repeatingSources,
  ...poseSources,
  ...againSources,
  ...studySources,
  ...colourSources,
  ...skinSources,
  ...strokeSources,
  ...labelSources,
  ...healedSources,
  ...lampSources,
  ...conversionSources,
  ...archSources,
  ...underSources,
  ...firstAidSources,
  ...numbingSources,
  ...eyeSources,
  ...exposureSources,
} as const satisfies Readonly<Record<string, Source>>;

export type SourceId = keyof typeof bibliography;

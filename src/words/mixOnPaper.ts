import type { Lamp } from '#lib/colour/lamps.ts';
import { lampWords, oldWorkWords } from './mixByDrops.ts';

type State = Readonly<{ skinL: number; skinA: number; skinB: number; oldWork: keyof typeof oldWorkWords; dose: number; depth: number; coverage: number; lamp: Lamp }>;

/** What was mixed and for which skin, for paper: there the fields are left out. */
export function mixOnPaper(drops: readonly Readonly<{ name: string; count: number }>[], { skinL, skinA, skinB, oldWork, dose, depth, coverage, lamp }: State): string {
  const mix = drops.filter(({ count }) => count > 0).map(({ name, count }) => `${count} × ${name}`).join('; ');
  return `Drops: ${mix}. Dose ${dose}. Skin L* ${skinL}, a* ${skinA}, b* ${skinB}. Old pigment: ${oldWork === 'none' ? 'none' : oldWorkWords[oldWork]}. Skin covered ${coverage} %, model depth ${depth} mm. Seen under ${lampWords[lamp]}.`;
}

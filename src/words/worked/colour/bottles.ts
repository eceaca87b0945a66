import { reader, type WorkedNumbers, type WorkedWords } from '../workedReader.ts';

/** What the worked examples about bottles, in the bottle and in skin say. */
export const bottlesWorkedWords = {
  'bottle-and-skin': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'One brown: in the bottle, in light skin, in deep skin',
      steps: [
        `Three drops brown and one drop orange, in a thick layer as in the bottle: L* ${n('bottleL')}, a* ${n('bottleA')}, b* ${n('bottleB')}.`,
        `The same mix ${n('depthMm')} mm deep in skin of L* ${n('lightL', 0)}, straight over the pigment: L* ${n('inLightL')}, a* ${n('inLightA')}, b* ${n('inLightB')}.`,
        `In skin of L* ${n('deepL', 0)}: L* ${n('inDeepL')}, a* ${n('inDeepA')}. This skin lies outside the measured skins, so the model is less sure of it.`,
        `Back to the lighter skin, with the pigment ${n('deeperMm')} mm deep: L* ${n('deeperL')}, a* ${n('deeperA')}. Deeper is lighter and less red.`,
      ],
      answer: `The light skin lifts the mix by ${n('answer')} in L*`,
      after: 'Strokes leave skin bare, so from arm’s length the brow is lighter still.',
    };
  },
  'one-label-two-bottles': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'One list of ingredients, two bottles',
      steps: [
        `Two invented bottles. Both labels read: CI 77492, CI 77499, CI 77491. Yellow oxide most, then black, then red.`,
        `The first holds ${n('yellow', 0)} parts yellow, ${n('black', 0)} black, ${n('red', 0)} red. In the bottle: L* ${n('oneL')}, a* ${n('oneA')}, b* ${n('oneB')}.`,
        `The second holds ${n('otherYellow', 0)}, ${n('otherBlack', 0)} and ${n('otherRed', 0)}. In the bottle: L* ${n('otherL')}, a* ${n('otherA')}, b* ${n('otherB')}.`,
        `In skin of L* ${n('skinL', 0)}, straight over the pigment, the same dose of each: the two lie ${n('inSkinApart')} apart.`,
      ],
      answer: `In the bottle they lie ${n('answer')} apart, and their labels are the same`,
      after: 'The label says which pigments and in what order. It does not say how much.',
    };
  },
} satisfies Readonly<Record<string, (numbers: WorkedNumbers) => WorkedWords>>;

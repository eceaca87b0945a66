import { reader, type WorkedNumbers, type WorkedWords } from '../workedReader.ts';

/** What the worked examples about old pigment say. */
export const oldPigmentWorkedWords = {
  'grey-blue-wants-orange': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: `The weaver: skin of L* ${n('l', 0)}, old work grey-blue`,
      steps: [
        `Her skin has a* ${n('a')}, b* ${n('b')}; the old work a* ${n('oldA')}, b* ${n('oldB')}. The way back is +${n('wayA')} in a* and +${n('wayB')} in b*.`,
        `In this model one dose of ${n('dose')} of yellow oxide goes +${n('yellowA')} and +${n('yellowB')}: cosine ${n('yellowCos', 2)}. Much yellow, hardly any red.`,
        `Orange goes +${n('orangeA')} and +${n('orangeB')}: cosine ${n('orangeCos', 2)}. Nearer to the way back, and further along it.`,
      ],
      answer: `Orange goes back, and costs ${n('answer')} in L*`,
      after: 'Hue comes back only in part; darkness is paid at once.',
    };
  },
  'yellow-turns-green': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: `The net mender: yellow over grey-blue on skin of L* ${n('l', 0)}`,
      steps: [
        `Her skin has a* ${n('a')}. Over the old grey-blue, yellow oxide alone at ${n('dose')} gives a* ${n('aloneA')} and b* ${n('aloneB')}: yellow without red. Beside her skin that looks olive.`,
        `Below nought it never falls in this model, up to a dose of ${n('most')}.`,
        'Now one drop of iron black to each drop of yellow. Raise the dose until a* crosses nought.',
      ],
      answer: `Green from a dose of ${n('answer')}`,
      after: 'Three drops of yellow to one of black do not cross. Red in the mix keeps it out.',
    };
  },
  'pink-gets-darker': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: `The florist: a pink remnant in skin of L* ${n('l', 0)}`,
      steps: [
        `Her skin has a* ${n('a')}, the remnant ${n('oldA')}: it has to lose ${n('oldA')} − ${n('a')} in a*. No bottle here holds green or blue.`,
        `A dark brown with iron black at ${n('dose')} leaves a* ${n('leftA')}. It takes red away by letting less light come back.`,
        `Lightness pays: from L* ${n('oldL')} to ${n('newL')}.`,
      ],
      answer: `Less pink, for ${n('answer')} in L*`,
      after: 'A brown dark enough for the remnant, and not darker than needed.',
    };
  },
} satisfies Readonly<Record<string, (numbers: WorkedNumbers) => WorkedWords>>;

import { reader, type WorkedNumbers, type WorkedWords } from '../workedReader.ts';

/** What the worked examples about clients say. */
export const clientsWorkedWords = {
  'brown-on-five-skins': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'An ordinary brown on five skins',
      steps: [
        `Each wants a brown a fifth darker than her skin, a* ${n('wantA', 0)}, b* ${n('wantB', 0)}, in 60 of 100 of the skin. Every recipe of at most four drops from three bottles is tried.`,
        `Skins of L* 72, 63, 54 and 45: the nearest stays ${n('on72')}, ${n('on63')}, ${n('on54')} and ${n('on45')} away at the worse of six weeks and two years. Under ${n('limit', 0)} counts as reached.`,
        `Skin of L* ${n('deepest', 0)}: ${n('on36')}. Dark skin is darkened less by the same layer. A brown an eighth darker, L* ${n('smallStep')}, is within reach there.`,
      ],
      answer: `On the deepest skin the smaller step is reached: ${n('answer')} away`,
      after:
        'The two deepest skins lie outside the measured skins, so the model is less sure of them. That is a gap in the measurements, not in the skin.',
    };
  },
  'baker-orange': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: `The baker: old orange in skin of L* ${n('l', 0)}`,
      steps: [
        `The old work is light, L* ${n('oldL')}, with too much red: a* ${n('oldA')} against ${n('a')}. It is ${n('now')} from the brown she wants, L* ${n('wantL')}.`,
        'There is room to go darker. Searched among the browns only, because a brow is a brown.',
        `One bottle does it, dark brown with iron black. It costs ${n('price')} in L*, down to ${n('newL')}.`,
      ],
      answer: `Correct the hue, same shape: ${n('answer')} away`,
      after: 'Not today: her brows still settle after toxin, and nobody draws on a brow that moves.',
    };
  },
  'violinist-salmon': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: `The violinist: salmon in skin of L* ${n('l', 0)}, and she asks for skin colour`,
      steps: [
        `Inside the new shape she wants a brown of L* ${n('wantL')}. Among the browns the nearest stays ${n('inside')} away: that can be corrected.`,
        `Her long tail lies outside the shape. There the wish is her bare skin, ${n('tailNow')} from the salmon.`,
        'Now allow every share of white and skin colour, and search for her skin.',
      ],
      answer: `Skin colour does not bring the skin back: ${n('answer')} away`,
      after:
        'Correct inside, lighten the tail. White and skin-coloured layers also look chalky later, and some darken under a laser.',
    };
  },
  'pilot-grey-blue': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: `The ferry pilot: grey-blue in skin of L* ${n('l', 0)}`,
      steps: [
        `The old work has L* ${n('oldL')}, a* ${n('oldA')}. She wants a warmer brown of L* ${n('wantL')}. So the old work is darker than the wish: ${n('now')} apart.`,
        'Pigment takes nothing away. Orange would turn the hue, and darken it further.',
        `With any share of white the search says ${n('white')}. That does not count, and it is too far as well.`,
      ],
      answer: `Lighten first, no colour today: ${n('answer')} away`,
      after: `Under ${n('limit', 0)} would count. “Orange fixes grey” is true of hue alone.`,
    };
  },
  'choir-leader-ash-grey': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: `The choir leader: ash-grey in deep skin, L* ${n('l', 0)}, and an itchy lump`,
      steps: [
        'Finger before eye: her right tail is lumpy and has itched for three months. That decides. A doctor sees it first. Her medicine is not for us to change.',
        `For the file, the colour: L* ${n('oldL')}, a* ${n('oldA')}, ${n('now')} from a brown of L* ${n('wantL')}.`,
        `Were the skin quiet, the nearest recipe would stay ${n('answer')} away. Under ${n('limit', 0)} would count.`,
      ],
      answer: `Doctor first; cover would not work either: ${n('answer')} away`,
      after:
        'Her skin lies outside the measured skins, so the distance is less sure. The order of the questions is not.',
    };
  },
  'potter-darkened': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: `The potter: brown under skin colour, darker since the laser, skin of L* ${n('l', 0)}`,
      steps: [
        `The old work has L* ${n('oldL')} today, ${n('now')} from the brown she wants, L* ${n('wantL')}. It is darker than the wish already.`,
        'Someone laid skin colour over a brown; the laser darkened it. What lies where, nobody knows.',
        `The nearest recipe ends ${n('answer')} away. Even the best drop leaves it farther off than nothing.`,
      ],
      answer: `No pigment: ${n('answer')} away, against ${n('now')} now`,
      after: 'Ask for the records, wait, and send her back to the same provider.',
    };
  },
  'bell-ringer-leave-it': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: `The bell-ringer: an even brown at eleven months, skin of L* ${n('l', 0)}`,
      steps: [
        `The brow has L* ${n('oldL')}, a* ${n('oldA')}, b* ${n('oldB')}. She wanted L* ${n('wantL')}, a* ${n('wantA')}, b* ${n('wantB')}.`,
        `A recipe could bring it to ${n('could')}. That is a reason for nobody but the appointment book.`,
        `Under ${n('limit', 0)} counts as reached.`,
      ],
      answer: `Leave it: ${n('answer')} from her wish`,
      after: 'Look again in half a year. Every refresh adds pigment and wear.',
    };
  },
} satisfies Readonly<Record<string, (numbers: WorkedNumbers) => WorkedWords>>;

import { clientWords } from './workedClients.ts';
import { lampWorkedWords } from './workedLamps.ts';
import { reader, type WorkedNumbers, type WorkedWords } from './workedReader.ts';

type Numbers = WorkedNumbers;

/** Text for each worked example, from its inputs and the numbers the library returned. */
export const workedWords = {
  'midline-by-pair-middles': (numbers: Numbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'A ruler across the face, four pairs of marks',
      steps: [
        `Inner eye corners at ${n('innerRight')} and ${n('innerLeft')} mm. Add them and halve: the middle is ${n('innerMiddle')} mm.`,
        `Pupils at ${n('pupilRight')} and ${n('pupilLeft')} mm: the middle is ${n('pupilMiddle')} mm. Outer eye corners at ${n('outerRight')} and ${n('outerLeft')} mm: the middle is ${n('outerMiddle')} mm.`,
        `Nose wings at ${n('wingRight')} and ${n('wingLeft')} mm: the middle is ${n('wingMiddle')} mm. That is ${n('noseOff')} mm to the client’s left of where the others meet. Leave the nose out.`,
        `Take the mean of the three that agree: (${n('innerMiddle')} + ${n('pupilMiddle')} + ${n('outerMiddle')}) ÷ 3.`,
      ],
      answer: `The midline crosses the ruler at ${n('answer')} mm`,
      after: 'The figure does this with every mark at once. It finds how the head leans as well.',
    };
  },
  'smallest-real-difference': (numbers: Numbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: `Is ${n('archDifference')} mm between the arches real?`,
      steps: [
        `Your own reading error is ${n('temMm')} mm. The tools add a little: pencil line ${n('pencil', 2)}, caliper ${n('caliper', 2)}, thread ${n('thread', 2)} mm.`,
        `Put the tools together: square each, add, take the root. That gives ${n('tools', 2)} mm.`,
        `One reading a side: add the squares of ${n('temMm')} and ${n('tools', 2)}. Double the sum, because there are two sides. Take the root.`,
        `You compare ${n('comparisons', 0)} numbers on this face, so multiply by ${n('factor', 2)} instead of 1.96.`,
      ],
      answer: `Real from ${n('answer')} mm`,
      after: `${n('archDifference')} mm is more, so this difference counts as real.`,
    };
  },
  'leaning-head': (numbers: Numbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: `The violinist: is her right arch really ${n('read')} mm higher?`,
      steps: [
        `In the picture the right arch stands ${n('read')} mm higher. The line of her eye corners leans too: ${n('tiltDeg')}°, higher on her right. So her head leans.`,
        `The sine of ${n('tiltDeg')}° is ${n('sine', 4)}: so many millimetres up for each millimetre along.`,
        `Her arches are ${n('spanMm', 0)} mm apart. ${n('spanMm', 0)} × ${n('sine', 4)} = ${n('answer')} mm come from the lean alone.`,
        `What is left: ${n('read')} − ${n('answer')} = ${n('left')} mm. Her smallest real difference is ${n('real', 2)} mm, so a difference of the arches is not shown to be real.`,
      ],
      answer: `The lean fakes ${n('answer')} mm`,
      after:
        '“Raise the left arch” would have tattooed the lean of her head. Her real problem is the tail, and that is another lesson.',
    };
  },
  'bell-ringer': (numbers: Numbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'The bell-ringer: a reminder says refresh',
      steps: [
        `She was tattooed eleven months ago. The brown is even, and her sides differ by ${n('sidesMm')} mm. Your error is ${n('temMm')} mm for one reading; you took ${n('readings', 0)} a side. Their mean has ${n('temMm')} divided by the root of ${n('readings', 0)}: ${n('mean', 2)} mm.`,
        `Pencil, caliper and thread add ${n('tools', 2)} mm. Square both, add, take the root: ${n('side', 2)} mm for one side.`,
        `A difference has two sides: times the root of 2 gives ${n('both', 2)} mm.`,
        `You compare ${n('comparisons', 0)} numbers, so the factor is ${n('factor', 2)}: ${n('factor', 2)} × ${n('both', 2)}.`,
      ],
      answer: `Real from ${n('answer')} mm: her ${n('sidesMm')} mm is not shown`,
      after:
        'The colour is even and no difference is shown. A date is not a reason to tattoo: leave it, and look again in six months.',
    };
  },
  'one-arch-for-both': (numbers: Numbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'The bell-ringer: one arch from two sides',
      steps: [
        `Fronts ${n('frontRight')} mm right and ${n('frontLeft')} mm left, tails ${n('tailRight')} and ${n('tailLeft')} mm. No difference is shown to be real. Take the means: front ${n('front', 2)}, tail ${n('tail', 2)} mm.`,
        `The settled length is ${n('tail', 2)} − ${n('front', 2)} = ${n('length', 2)} mm.`,
        `Golden section from the front: ${n('share', 3)} × ${n('length', 2)} = ${n('part', 2)} mm. Add the front, because you measure from the midline.`,
      ],
      answer: `One arch, ${n('answer', 2)} mm from the midline on both sides: mark ${n('answer')} mm`,
      after: `Counted from the tail, the same section gives ${n('fromTail', 2)} mm: inside the pupil on most faces. Each side by itself would give ${n('rightAlone')} on the right and ${n('leftAlone')} on the left, from differences nobody has shown.`,
    };
  },
  'baker-talking': (numbers: Numbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'The baker: two readings of two brows',
      steps: [
        `She talks while you read. Right arch ${n('talkRight')}, left ${n('talkLeft')} mm above the pupils: ${n('talking')} mm apart.`,
        `She lets her forehead go. Right ${n('restRight')}, left ${n('restLeft')} mm: ${n('answer')} mm apart.`,
        `Your error is ${n('temMm')} mm a reading, each number is the mean of ${n('readings', 0)}, the tools add ${n('tools', 2)} mm. For two sides that is ${n('both', 2)} mm. You look at two differences, so multiply by ${n('factor', 2)}: real from ${n('real', 2)} mm.`,
        `${n('talking')} mm is more. It is real, and it belongs to a talking face. ${n('answer')} mm is less: not shown to be real.`,
        'Map the reading at rest. There both arches stay as they are: same shape.',
      ],
      answer: `At rest ${n('answer')} mm, not shown to be real`,
      after:
        'She had toxin in her forehead 16 days ago, so even this reading waits until her brows have settled.',
    };
  },
  'violinist-tail': (numbers: Numbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'The violinist: what is wrong with the right tail?',
      steps: [
        `Length, straight across. Right: ${n('tailRight')} − ${n('frontRight')} = ${n('rightLength')} mm. Left: ${n('tailLeft')} − ${n('frontLeft')} = ${n('leftLength')} mm. The right brow is ${n('answer')} mm longer.`,
        `Level. The right tip lies ${n('tipUp')} mm above the pupils, the front’s lower edge ${n('frontUp')} mm. The tip is ${n('below')} mm too low.`,
        `Line. From nose wing to outer eye corner it goes ${n('out')} mm out and ${n('up')} mm up: ${n('slope', 3)} mm out for each mm up.`,
        `The tip lies ${n('rise')} mm above the corner. There the line stands at ${n('cornerOut')} + ${n('rise')} × ${n('slope', 3)} = ${n('limit')} mm. The tail ends at ${n('tailRight')} mm: ${n('past')} mm past it.`,
      ],
      answer: `The right brow is ${n('answer')} mm too long`,
      after:
        'Three checks out of four speak of one thing: the end of the right tail. Raising the left arch would have left all three as they are.',
    };
  },
  'pilot-thickness': (numbers: Numbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'The ferry pilot’s first sketch: is the right tail too thick?',
      steps: [
        `Look at three quarters of the length. Straight up, the right brow measures ${n('rightStraightUp')} mm and the left one ${n('leftStraightUp')}. The right one seems ${n('seeming')} mm thicker.`,
        `Now lay the ruler square to the brow. On the right it crosses the lower edge ${n('rightLowerOut')} mm out and ${n('rightLowerUp')} up, the upper edge ${n('rightUpperOut')} out and ${n('rightUpperUp')} up.`,
        `That is ${n('rightOut')} mm sideways and ${n('rightUp')} up: √(${n('rightOut')}² + ${n('rightUp')}²) = ${n('answer')} mm.`,
        `On the left it goes from ${n('leftLowerOut')} out, ${n('leftLowerUp')} up to ${n('leftUpperOut')} out, ${n('leftUpperUp')} up: ${n('leftOut')} sideways, ${n('leftUp')} up, √(${n('leftOut')}² + ${n('leftUp')}²) = ${n('left')} mm.`,
      ],
      answer: `Both are ${n('answer')} mm thick, straight across`,
      after:
        'The right tail falls more steeply, and that is all. Thinning it by what straight up said would have made it the thinner one.',
    };
  },
  'scale-by-iris': (numbers: Numbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'A picture without a ruler: a scale from the iris',
      steps: [
        `The visible iris measures ${n('irisDots', 0)} dots in the picture. People’s irises are ${n('irisMm', 2)} mm wide on average, give or take ${n('spreadMm', 2)}.`,
        `One dot is ${n('irisMm', 2)} ÷ ${n('irisDots', 0)} = ${n('dotMm', 3)} mm.`,
        `One arch stands ${n('differenceDots', 0)} dots higher: ${n('differenceDots', 0)} × ${n('dotMm', 3)} = ${n('answer')} mm. Twice the spread makes that uncertain by ${n('differenceDoubt')} mm.`,
        `The brow is ${n('lengthDots', 0)} dots long: ${n('lengthMm')} mm. The same spread makes that uncertain by ${n('lengthDoubt')} mm.`,
      ],
      answer: `Use the difference: ${n('answer')} mm, from this scale ± ${n('differenceDoubt')}`,
      after: `Refuse the length: ± ${n('lengthDoubt')} mm is more than any brow is worth. A sticker of known width in the brow’s plane mends both.`,
    };
  },
  'baker-first-pass': (numbers: Numbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'The baker: the top of her right arch after the first pass',
      steps: [
        `She waited until her brow had settled. Today she approved the outline sitting up, face at rest: arch top at ${n('approvedMm')} mm. Now, sitting up again and at rest, the pigment ends at ${n('pigmentMm')} mm. Her skin is swollen.`,
        `At an upper mark, lower is short: ${n('approvedMm')} − ${n('pigmentMm')} = ${n('answer')} mm short.`,
        `Your error is ${n('temMm')} mm and you took ${n('readings', 0)} readings, so the difference has ${n('both', 3)} mm. You judge ${n('comparisons', 0)} marks together: ${n('factor', 2)} × ${n('both', 3)} = ${n('real', 2)} mm. The gap is real.`,
        `Did the whole arch move? Her lower arch edge was approved at ${n('lowerApprovedMm')} mm and reads ${n('lowerMm')} mm: on its line. So only the top is short.`,
        'The gap is inside the approved outline, and more than a millimetre, so swelling is no reason to leave it. Her skin is whole and does not bleed.',
      ],
      answer: `Add here: ${n('answer')} mm, to the outline and no further`,
      after: `Filled, her arch is ${n('thick')} mm thick, as she approved. If its lower edge had read lower as well, the brow or the level would have moved: then nothing is added, and both are read again.`,
    };
  },
  'nothing-under-the-tail': (numbers: Numbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'The potter: how much of her tail sits on nothing?',
      steps: [
        `Her outline is ${n('outline', 0)} mm long. Hair lies under it from ${n('hairFrom', 0)} to ${n('hairTo', 0)} mm. Without hair at the tail: ${n('hairTo', 0)} to ${n('outline', 0)} mm.`,
        `The edge of the bone lies ${n('under', 0)} mm under the lower edge at the arch, which stands at ${n('arch', 0)} mm, and ${n('boneTail', 0)} mm over it at the tail. Between them it rises ${n('rise', 0)} mm in ${n('span', 0)} mm.`,
        `It has to rise ${n('under', 0)} mm to meet the lower edge: ${n('span', 0)} × ${n('under', 0)} ÷ ${n('rise', 0)} = ${n('span', 0)} ÷ ${n('rise', 0)} mm further out. The outline leaves the bone at ${n('leaves', 0)} mm.`,
        `No hair from ${n('hairTo', 0)} mm, no bone from ${n('leaves', 0)} mm. Both are missing from the later of the two: ${n('from', 0)} to ${n('outline', 0)} mm.`,
      ],
      answer: `The last ${n('answer')} mm sit on nothing`,
      after: `Between ${n('hairTo', 0)} and ${n('leaves', 0)} mm there is bare skin on bone. That part is a question for her, not for the ruler.`,
    };
  },
  'two-measured-people': (numbers: Numbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'Two measured people: one typology angle, two hues',
      steps: [
        `The first reads L* ${n('firstL', 2)}, a* ${n('firstA', 2)}, b* ${n('firstB', 2)}; the second L* ${n('secondL', 2)}, a* ${n('secondA', 2)}, b* ${n('secondB', 2)}. Both are people of a public set of measured skin.`,
        `Typology angle: lightness minus 50, over yellow, as an angle. That gives ${n('firstIta')}° and ${n('secondIta')}°. They are ${n('itaApart')}° apart, and both are “light” in the scheme of Chardon and Del Bino.`,
        `Hue angle: yellow over red, as an angle. That gives ${n('firstHue')}° for the first and ${n('secondHue')}° for the second.`,
      ],
      answer: `Their hues are ${n('answer')}° apart`,
      after:
        'The first leans clearly red, the second does not. A class alone would have called them the same.',
      whose: 'Measured by Cooksey, Allen and Tsai, inside of the forearm',
    };
  },
  'ferry-pilot-old-shape': (numbers: Numbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'The ferry pilot: does the old shape fit?',
      steps: [
        `Her planned arch top stands at ${n('topMm')} mm. She allows ${n('raiseMm')} mm more: ${n('topMm')} + ${n('raiseMm')} = ${n('allowed')} mm, and no higher.`,
        `The old upper edge stands at ${n('oldTopMm')} mm: ${n('oldTopMm')} − ${n('allowed')} = ${n('answer')} mm too high. The approved limit holds, so this much stays outside.`,
        `To chase it, the arch would rise ${n('chased')} mm with its margin. And a margin above and below adds 2 × ${n('factor', 3)} × ${n('uncertaintyMm')} = ${n('grows')} mm to ${n('oldThicknessMm')} mm of old work, ${n('share', 0)} % each time.`,
      ],
      answer: `Lighten first: ${n('answer')} mm stay above the top she allows; no colour today`,
      after:
        'Tell her both numbers: what stays outside, and what each refresh adds. When the old work is lighter, plan again from fresh marks.',
    };
  },
  'grey-blue-wants-orange': (numbers: Numbers): WorkedWords => {
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
  'yellow-turns-green': (numbers: Numbers): WorkedWords => {
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
  'pink-gets-darker': (numbers: Numbers): WorkedWords => {
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
  'heals-alike': (numbers: Numbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'Two different works, one healed colour',
      steps: [
        `One work lies ${n('firstMm', 2)} mm deep in the model, with a dose of ${n('firstDose')} and the loss as assumed. After one year it shows L* ${n('firstL')}, a* ${n('firstA')}, b* ${n('firstB')}.`,
        `Another lies ${n('secondMm', 2)} mm deep, with a dose of ${n('secondDose')} and ${n('times', 0)} times that loss. After one year: L* ${n('secondL')}, a* ${n('secondA')}, b* ${n('secondB')}.`,
        `The colour difference of the two is ${n('answer')}. A single reading may be off by ${n('allowed', 0)}: it cannot tell them apart.`,
        `After ${n('later', 0)} years they are ${n('laterApart')} apart. Time parts them a little more.`,
      ],
      answer: `They are ${n('answer')} apart, and ${n('allowed', 0)} is allowed`,
      after: 'So a healed colour names no cause. It names what would fit.',
    };
  },
  'one-label-two-bottles': (numbers: Numbers): WorkedWords => {
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
  'bottle-and-skin': (numbers: Numbers): WorkedWords => {
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
  'strokes-for-healed': (numbers: Numbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'The violinist: how many strokes, so that the healed brow is not too full?',
      steps: [
        `First plan: ${n('count', 0)} strokes side by side, ${n('lengthMm', 0)} mm long and ${n('widthMm', 2)} mm wide. Together ${n('count', 0)} × ${n('lengthMm', 0)} × ${n('widthMm', 2)} = ${n('inked')} mm². Her brow has ${n('areaMm2')} mm²: ${n('fresh')} % is covered.`,
        `Once spread they are ${n('spreadMm', 2)} mm wide: ${n('count', 0)} × ${n('lengthMm', 0)} × ${n('spreadMm', 2)} = ${n('inkedWide', 0)} mm², which is ${n('spread')} %. She wants ${n('wanted', 0)} % at most.`,
        `${n('wanted', 0)} % of ${n('areaMm2')} is ${n('wanting')} mm². One spread stroke covers ${n('lengthMm', 0)} × ${n('spreadMm', 2)} = ${n('oneWide')} mm².`,
        `${n('wanting')} ÷ ${n('oneWide')} = ${n('answer')}.`,
      ],
      answer: `${n('answer')} strokes at most: set ${String(Math.floor(numbers['answer'] ?? 0))}`,
      after: `On the day they cover only ${n('freshThen')} %. It will look thin to her. Show her the picture of both days before you begin.`,
    };
  },
  ...clientWords,
  ...lampWorkedWords,
} satisfies Readonly<Record<string, (numbers: Numbers) => WorkedWords>>;

export type WorkedId = keyof typeof workedWords;

import { reader, type WorkedNumbers, type WorkedWords } from '../workedReader.ts';

/** What the worked examples about lamps, and what moves a colour most say. */
export const lampsWorkedWords = {
  'same-brow-two-lamps': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'One brow, a window and an evening lamp',
      steps: [
        `Skin L* ${n('skinL', 0)}, a* ${n('skinA', 0)}, b* ${n('skinB', 0)}. The brow at six weeks, by daylight: a* ${n('dayA')}. Under the tungsten lamp the same brow reads a* ${n('lampA')}.`,
        `The bare skin beside it goes from ${n('skinA')} to ${n('skinLampA')}, a step of ${n('skinStep')}. The lamp moves skin more than it moves the brow.`,
        `Two years on, under the tungsten lamp: a* ${n('lastLampA')}. Against the daylight reading that looks like ${n('falseStep')} redder. Against the tungsten reading it is ${n('trueStep')}.`,
        `The whole colour moved by ${n('sinceDay')} in daylight and by ${n('sinceLamp')} under the tungsten lamp: nearly the same.`,
      ],
      answer: `The lamp alone adds ${n('answer')} in a*`,
      after: 'Change “Seen under” in the figure and find the same numbers.',
    };
  },
  'two-skins-under-lamps': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'Two measured skins that nearly match',
      steps: [
        `By daylight: a* ${n('firstA')} and ${n('secondA')}. The whole difference is ${n('day', 2)}.`,
        `Under a white LED it is ${n('led', 2)}.`,
        `Under the tungsten lamp: a* ${n('firstLampA')} and ${n('secondLampA')}.`,
      ],
      answer: `Under the tungsten lamp they lie ${n('answer')} apart`,
      after: 'Their spectra differ where the tungsten lamp is strong.',
      whose: 'Measured by Cooksey, Allen and Tsai, inside of the forearm',
    };
  },
  'what-matters-most': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'What moves the colour, and what hardly does',
      steps: [
        `The mix of the figure in skin of L* ${n('skinL', 0)}. Skin covered, from a quarter less to a quarter more, moves the colour at six weeks by ${n('answer')}.`,
        `Depth doubled: ${n('depth')}. Dose, a quarter less to a quarter more: ${n('doseMoves')}. The veil over its whole range: ${n('veil')}.`,
        `Iron black a fifth stronger: ${n('black')}. Yellow oxide a fifth stronger: ${n('yellow')}.`,
        `In skin of L* ${n('deepL', 0)}: coverage ${n('deepCoverage')}, depth ${n('deepDepth')}, dose ${n('deepDose')}, iron black ${n('deepBlack')}.`,
      ],
      answer: `Coverage moves it most here: ${n('answer')}`,
      after: 'The figure has the whole table for any mix and skin, under “What matters most”.',
    };
  },
} satisfies Readonly<Record<string, (numbers: WorkedNumbers) => WorkedWords>>;

import { headPoseOf } from '#calculators/headPoseOf.ts';
import { poseFields, type PoseState } from '#calculators/poseFields.ts';
import { poseStart } from '#calculators/poseStart.ts';
import type { Calculator } from '#calculators/spec.ts';
import { PosedFace } from '#components/pictures/PosedFace.tsx';
import { onDemand } from '#components/site/onDemand.ts';
import { posedLowerTail, posedMarks } from '#lib/mapping/pose/posedMarks.ts';
import type { FalseDifferences } from '#lib/mapping/pose/readPosed.ts';
import { fixed } from '#words/number.ts';
import { flipWords, poseCaution, poseEnds, poseLabels, poseSays } from '#words/pose.ts';
import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { ChoiceBox } from '../fields/ChoiceBox.tsx';
import { Frame } from '../frame/Frame.tsx';
import { PoseTable } from './PoseTable.tsx';
import { SlideNumber } from '../fields/SlideNumber.tsx';
import { useCalculator } from '../frame/useCalculator.ts';
import { useKept } from '../lazy/useKept.ts';

/** The inputs without the reading of the picture, which is fetched once something moves. */
const light: Calculator<PoseState, undefined> = { id: 'pose', fields: poseFields, solve: () => undefined };
const fetchReader = onDemand(() => import('#lib/mapping/pose/readPosed.ts'));
type Name = keyof PoseState;
const isName = (key: string): key is Name => Object.hasOwn(poseFields, key);
const nameOf = (key: string) => (isName(key) ? poseLabels[key] : key);
const slides = ['turn', 'nod', 'tilt', 'distance'] as const;
const flips = (['as-seen', 'mirrored'] as const).map((value) => ({ value, label: flipWords[value] }));

/**
 * What a turned, nodded, tilted or near picture does to a face that is exactly symmetric: the island. The
 * paper comes in as children, drawn at build.
 */
export function Pose({ id = 'pose', children }: Readonly<{ id?: string; children?: ComponentChildren }>) {
  const desk = useCalculator(light, nameOf);
  const { state } = desk;
  const [seen, setSeen] = useState<FalseDifferences>(poseStart);
  const [isMissing, setMissing] = useState(false);
  const isMoved = slides.some((name) => state[name] !== poseFields[name].start);
  useEffect(() => {
    let isOld = false;
    if (!isMoved) {
      setSeen(poseStart);
      setMissing(false);
    } else
      fetchReader().then(
        ({ readPosed }) => {
          const pose = headPoseOf(state);
          const found = readPosed(posedMarks(pose), posedLowerTail(pose));
          if (!isOld && found.ok) setSeen(found);
          setMissing(false);
        },
        () => setMissing(true),
      );
    return () => {
      isOld = true;
    };
    // oxlint-disable-next-line react-hooks/exhaustive-deps -- whether it moved follows from the state.
  }, [state]);
  useKept(desk, isMissing);
  return (
    <Frame
      tall
      desk={desk}
      id={id}
      address="/calculators/pose/"
      says={poseSays(seen, state)}
      caution={poseCaution(state)}
      missing={isMissing && 'What reads the picture'}
      picture={
        <div class="stack">
          <div class="still" aria-hidden="true">
            {children}
          </div>
          <PosedFace id={id} state={state} seen={seen} />
        </div>
      }
      side={
        <>
          {slides.map((name) => {
            const { control } = poseFields[name];
            if (control.kind !== 'number') return null;
            return (
              <SlideNumber
                key={name}
                id={`${id}-${name}`}
                label={poseLabels[name]}
                unit={control.unit}
                value={state[name]}
                shown={fixed(state[name], control.decimals).replace('−', '-')}
                lo={control.lo}
                hi={control.hi}
                step={control.step}
                ends={poseEnds[name]}
                refused={desk.draft(name)}
                onType={(text) => desk.type(name, text)}
              />
            );
          })}
          <ChoiceBox
            id={`${id}-flip`}
            label={poseLabels.flip}
            value={state.flip}
            options={flips}
            onType={(text) => desk.type('flip', text)}
          />
        </>
      }
    >
      {!isMissing && <PoseTable seen={seen} />}
    </Frame>
  );
}

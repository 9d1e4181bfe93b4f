// Sizes that the lesson leaves free at a stage, while building: a slider and a number each, within the lesson's limits.
import type { SizeOffer } from '../../state/common/contract';
import { sizeFormat, sizeNow, sizesOf, stepOf } from '../../state/build/sizing';
import { say } from '../../../words/say';
import { NumberControl } from '../common/NumberControl';
import { useBuild, usePage } from '../common/pageStore';

function SizeControl({ offer }: { offer: SizeOffer }) {
  const setSize = usePage((page) => page.setSize);
  const plan = useBuild((build) => build.plan);
  const floor_m = useBuild((build) => build.design?.stages.find((stage) => stage.id === offer.stage)?.floor_m);
  const { stage, size, from, to } = offer;
  const { variable, factor } = sizeFormat(offer);
  const set = sizeNow(plan, stage, size);
  const value = set ?? (size === 'stand_m' && floor_m !== undefined ? floor_m : from);
  return (
    <>
      <NumberControl
        label={say(`size.${size}`)}
        amount={`size.amount.${size}`}
        variable={variable}
        value={Number((factor * value).toFixed(3))}
        min={Number((factor * Math.min(from, value)).toFixed(3))}
        max={Number((factor * Math.max(to, value)).toFixed(3))}
        step={Number((factor * stepOf(offer)).toFixed(4))}
        note={size === 'stand_m' && set === null ? () => say('size.following') : undefined}
        onCommit={(shown) => setSize(stage, size, shown / factor)}
      />
      {size === 'stand_m' && set !== null && (
        <button type="button" className="btn" onClick={() => setSize(stage, size, null)}>
          {say('size.follow')}
        </button>
      )}
    </>
  );
}

/** @param elsewhere sizes that the stage's own controls set already */
export function SizeControls({ stageId, elsewhere }: { stageId: string; elsewhere: readonly SizeOffer['size'][] }) {
  const lesson = useBuild((build) => build.lesson);
  const offers = sizesOf(lesson, stageId).filter((offer) => !elsewhere.includes(offer.size));
  if (offers.length === 0) return null;
  return (
    <div className="controls" role="group" aria-label={say('size.title')}>
      {offers.map((offer) => (
        <SizeControl key={offer.size} offer={offer} />
      ))}
    </div>
  );
}

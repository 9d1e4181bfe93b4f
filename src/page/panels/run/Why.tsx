// Why the water of a stage is as it is, in two or three sentences made from the sums of the last whole day.
import { factsOf } from '../../state/common/selectors';
import { lastWholeDay } from '../../state/run/daySums';
import { whyAt } from '../../state/run/why';
import { say } from '../../../words/say';
import { useMoment } from '../common/moment';
import { useLived, usePage } from '../common/pageStore';
import { whySentence } from './whyWords';

export function WhyHere({ stageId }: { stageId: string }) {
  const plan = useLived((lived) => lived.plan);
  const season = useLived((lived) => lived.season);
  const facts = usePage(factsOf);
  const tint = usePage((page) => page.view.tint);
  const day = lastWholeDay(useMoment());
  if (facts === null) return null;
  const water_m3 = season.stages.reduce((sum, stage) => sum + stage.volume_m3, 0);
  const told = day < 0 ? [] : whyAt(season, facts, plan, stageId, (day + 1) * 24, tint);
  return (
    <section className="why" aria-labelledby="why-title">
      <h2 id="why-title">{say('why.title')}</h2>
      {day < 0 && <p>{say('why.notYet')}</p>}
      {day >= 0 && told.length === 0 && <p>{say('why.nothing', { day })}</p>}
      {told.length > 0 && (
        <p>
          {say('why.day', { day })}{' '}
          {told.map((why) => (
            <span key={why.topic}>
              {whySentence(why, tint, water_m3).map((piece, index) => (index % 2 === 1 ? <b key={index}>{piece}</b> : piece))}{' '}
            </span>
          ))}
        </p>
      )}
    </section>
  );
}

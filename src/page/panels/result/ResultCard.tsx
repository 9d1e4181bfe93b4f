// The end of a season: fish health, harvest, the marks and goals, predictions, and the formulas written out with their numbers.
import { useEffect, useRef } from 'react';
import type { Scores } from '../../state/common/contract';
import { harvestShares } from '../../state/common/selectors';
import { say } from '../../../words/say';
import { figure, valueOf, whole, withUnit } from '../../../words/units';
import { MarkAsks } from './MarkAsks';
import { Stamp } from '../common/marks';
import { useLived, usePageStore } from '../common/pageStore';
import { ResultPredictions } from './ResultPredictions';

function Formulas({ scores, weight }: { scores: Scores; weight: number }) {
  const shares = harvestShares(scores);
  // a lesson that weighs one of the two alone has a shorter formula
  const part = weight === 0 ? 'gain' : weight === 1 ? 'plants' : 'harvest';
  return (
    <div className="formulas">
      <p>
        {say('result.fishFormula')}
        <br />
        <b>
          {say('result.fishNumbers', {
            survival: figure(scores.survival, 2),
            welfare: figure(scores.meanWelfare, 2),
            score: whole(scores.fishHealth),
          })}
        </b>
      </p>
      <p>
        {say(`result.${part}Formula`)}
        <br />
        <b>
          {part === 'harvest'
            ? say('result.harvestNumbers', {
                w: figure(weight, 2),
                v: figure(1 - weight, 2),
                plants: figure(shares.plants, 2),
                gain: figure(shares.gain, 2),
                score: whole(scores.harvest),
              })
            : say('result.shareNumbers', { share: figure(shares[part], 2), score: whole(scores.harvest) })}
        </b>
        <br />
        {say(part === 'harvest' ? 'result.harvestShares' : `result.${part}Share`, {
          plants: valueOf('kilograms', scores.plants_kg),
          plantsIdeal: withUnit('kilograms', scores.plantsIdeal_kg),
          gain: valueOf('kilograms', scores.gain_kg),
          gainIdeal: withUnit('kilograms', scores.gainIdeal_kg),
        })}
      </p>
    </div>
  );
}

function Beside({ scores }: { scores: Scores }) {
  const lines: [string, string][] = [
    [say('result.waterUsed'), withUnit('water_L', scores.waterUsed_L)],
    [say('result.nitrogen'), withUnit('grams', scores.nitrogenDischarged_g)],
    [say('result.solids'), withUnit('grams', scores.solidsDischarged_g)],
    [say('result.energy'), withUnit('energy_kWh', scores.energy_kWh)],
    [say('result.work'), withUnit('work_h', scores.work_h)],
  ];
  return (
    <dl className="facts" aria-label={say('result.beside')}>
      {lines.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}

export function ResultCard() {
  const store = usePageStore();
  const lesson = useLived((lived) => lived.lesson);
  const scores = useLived((lived) => lived.season.days.at(-1)?.scores ?? null);
  const judged = useLived((lived) => lived.judged);
  const card = useRef<HTMLElement>(null);
  useEffect(() => card.current?.focus(), []);
  if (scores === null) return null;
  const all = lesson.scoring.marks.length;
  const earned = judged?.marks.filter((mark) => mark.earned).length ?? 0;
  return (
    <section ref={card} className="card result" aria-labelledby="result-title" tabIndex={-1}>
      <div className="result-scroll" tabIndex={0} role="group" aria-labelledby="result-title">
        <div className="result-head">
          {!lesson.free && judged !== null && (
            <div className="stamps" role="img" aria-label={say('result.marks', { n: earned, all })}>
              {lesson.scoring.marks.map((_, index) => (
                <Stamp key={index} earned={index < earned} />
              ))}
            </div>
          )}
          <div className="result-marks">
            <h2 id="result-title">{say('result.title')}</h2>
            <p role="status">
              <b>
                {lesson.free
                  ? say('result.free')
                  : judged === null
                    ? say('goals.working')
                    : earned === 0
                      ? say('result.none')
                      : say('result.marks', { n: earned, all })}
              </b>
            </p>
          </div>
          <p className="result-score">
            <span>{say('brief.fishHealth')}</span>
            <b data-score="fishHealth">{whole(scores.fishHealth)}</b>
          </p>
          <p className="result-score">
            <span>{say('brief.harvest')}</span>
            <b data-score="harvest">{whole(scores.harvest)}</b>
          </p>
        </div>
        <div className="result-columns">
          <div>
            {!lesson.free && (
              <>
                <h3>{say('result.thresholds')}</h3>
                <MarkAsks lesson={lesson} marks={judged?.marks ?? null} scores={scores} whole />
              </>
            )}
          </div>
          <div>
            <h3>{say('result.next')}</h3>
            <p>{say(!lesson.free && earned === all ? 'result.nextTry' : 'result.nextLook')}</p>
            <ResultPredictions lesson={lesson} />
            <h3>{say('result.how')}</h3>
            <Formulas scores={scores} weight={lesson.scoring.plantsWeight} />
          </div>
          <div>
            <h3>{say('result.beside')}</h3>
            <Beside scores={scores} />
            {lesson.caveats.length > 0 && (
              <>
                <h3>{say('result.caveats')}</h3>
                <ul className="result-caveats">
                  {lesson.caveats.map((caveat) => (
                    <li key={caveat}>{caveat}</li>
                  ))}
                </ul>
              </>
            )}
          </div>
        </div>
      </div>
      <div className="row">
        <button type="button" className="btn go" onClick={() => store.getState().backToBuild()}>
          {say('result.back')}
        </button>
        <button type="button" className="btn" onClick={() => store.getState().showResult(false)}>
          {say('result.look')}
        </button>
      </div>
    </section>
  );
}

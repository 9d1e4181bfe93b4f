// The return pump in the inspector: whether it runs, and if not why, what it pours against its setting, and the water it stands in.
import { pumpNow } from '../../state/run/pump';
import type { DesignCheck, Plan } from '../../state/common/contract';
import type { SeasonView } from '../../state/common/state';
import { say } from '../../../words/say';
import { stageName } from '../../../words/stageNames';
import { withUnit } from '../../../words/units';
import { useMoment } from '../common/moment';

export function PumpFacts({ view, plan, design }: { view: SeasonView; plan: Plan; design: DesignCheck }) {
  const pump = pumpNow(view, plan, design, useMoment());
  if (pump === null) return <p className="note">{say('inspect.noWater')}</p>;
  const tank = stageName([...plan.loop, ...plan.side], pump.tank);
  const facts = [
    [say('pump.flow'), withUnit('flow_m3_d', pump.flow_m3_d)],
    ...(pump.setting_m3_d === null ? [] : [[say('pump.setting'), withUnit('flow_m3_d', pump.setting_m3_d)]]),
    [say('pump.lift'), withUnit('level_m', pump.lift_m)],
    [say('pump.depth'), withUnit('level_m', pump.depth_m)],
    [say('pump.usualDepth'), withUnit('level_m', pump.usualDepth_m)],
  ];
  return (
    <>
      <section className="why" aria-labelledby="why-title">
        <h2 id="why-title">{say('pump.title')}</h2>
        <p>{say(`pump.${pump.state}`, { tank })}</p>
      </section>
      <dl className="facts" aria-label={say('inspect.facts')}>
        {facts.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}

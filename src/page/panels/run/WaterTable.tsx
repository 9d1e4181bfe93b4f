// Water coming in, inside and going out of one stage, for the quantities of the eight tints.
import { TINTS, TINT_ORDER } from '../../state/common/tints';
import { bandApplies, markAt } from '../../state/run/troubles';
import { waterOf } from '../../state/common/selectors';
import type { TintId, Mark } from '../../state/common/state';
import { say } from '../../../words/say';
import { stageName } from '../../../words/stageNames';
import { measured, unitOf } from '../../../words/units';
import { MarkShape } from '../common/marks';
import { useMoment } from '../common/moment';
import { useLived, usePage } from '../common/pageStore';

/** Decimals of a table cell: one more than the tag in the picture, so that small changes on the way can be seen. */
const decimalsOf = (tint: TintId): number => Math.min(2, TINTS[tint].decimals + 1);

function Arrow({ change }: { change: 'rises' | 'falls' | 'same' }) {
  const shape = change === 'rises' ? 'M0 -7L-6 1H-2V7H2V1H6Z' : change === 'falls' ? 'M0 7L-6 -1H-2V-7H2V-1H6Z' : 'M-6 -1.5H6V1.5H-6Z';
  return (
    <svg className="arrow" viewBox="-9 -9 18 18" role="img" aria-label={say(`inspect.${change}`)}>
      <path d={shape} fill="currentColor" />
    </svg>
  );
}

function Row({ tint, stageId, chosen }: { tint: TintId; stageId: string; chosen: boolean }) {
  const plan = useLived((lived) => lived.plan);
  const season = useLived((lived) => lived.season);
  const comfort = useLived((lived) => lived.comfort);
  const now_h = useMoment();
  const water = { in: 0, inside: 0, out: 0 };
  let mark: Mark | null = null;
  const kind = season.stages.find((stage) => stage.id === stageId)?.kind ?? '';
  for (const variable of TINTS[tint].variables) {
    const part = waterOf({ plan, season, now_h }, stageId, variable);
    water.in += part.in;
    water.inside += part.inside;
    water.out += part.out;
  }
  for (const variable of TINTS[tint].judged) {
    if (!comfort.some((band) => band.variable === variable && bandApplies(band, kind))) continue;
    const one = markAt(season, comfort, stageId, variable, now_h);
    if (mark === null || one === 'act' || (one === 'watch' && mark === 'fine')) mark = one;
  }
  const decimals = decimalsOf(tint);
  const step = 10 ** -decimals;
  const change =
    Math.abs(water.out - water.in) < step / 2 || !Number.isFinite(water.out - water.in) ? 'same' : water.out > water.in ? 'rises' : 'falls';
  const unit = unitOf(TINTS[tint].unitKey);
  return (
    <tr data-chosen={chosen || undefined}>
      <th scope="row">
        {say(`tint.${tint}`)} <span className="unit">{unit}</span>
      </th>
      <td>{measured(water.in, decimals)}</td>
      <td>
        {mark !== null && mark !== 'fine' && <MarkShape mark={mark} />}
        {measured(water.inside, decimals)}
      </td>
      <td>{measured(water.out, decimals)}</td>
      <td>
        <Arrow change={change} />
      </td>
    </tr>
  );
}

export function WaterTable({ stageId }: { stageId: string }) {
  const plan = useLived((lived) => lived.plan);
  const tint = usePage((page) => page.view.tint);
  return (
    <table className="water">
      <caption className="hidden">{say('inspect.water', { stage: stageName([...plan.loop, ...plan.side], stageId) })}</caption>
      <thead>
        <tr>
          <th scope="col">{say('inspect.quantity')}</th>
          <th scope="col">{say('inspect.in')}</th>
          <th scope="col">{say('inspect.inside')}</th>
          <th scope="col">{say('inspect.out')}</th>
          <th scope="col">
            <span className="hidden">{say('inspect.change')}</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {TINT_ORDER.map((one) => (
          <Row key={one} tint={one} stageId={stageId} chosen={one === tint} />
        ))}
      </tbody>
    </table>
  );
}

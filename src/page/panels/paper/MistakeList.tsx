// What each listed mistake does, with the number it shows beside the reference's.
import type { Plan, Played, Shown } from '../../state/common/contract';
import { say } from '../../../words/say';
import { whole } from '../../../words/units';
import { factsOf } from '../../state/common/selectors';
import { usePage } from '../common/pageStore';
import { measureValue, measureWords, timesWords } from '../common/measureWords';
import { Part } from './pieces';

function Consequence({ shown, plan }: { shown: Shown; plan: Plan }) {
  const facts = usePage(factsOf);
  const value = measureValue(shown.consequence, shown.mistake, facts);
  const reference = measureValue(shown.consequence, shown.reference, facts);
  // against next to nothing, "so many times" says nothing
  const words = Number.isFinite(shown.times)
    ? say('paper.key.shownTimes', { value, reference, times: timesWords(shown.times) })
    : say('paper.key.shown', { value, reference });
  return (
    <li>
      {measureWords(shown.consequence, plan)}: <b>{words}</b>
      {!shown.holds && <> · {say('paper.key.weak')}</>}
    </li>
  );
}

export function MistakeList({ plan, played }: { plan: Plan; played: readonly Played[] }) {
  const idle = played.find((one) => one.role === 'idle');
  return (
    <Part id="mistakes" heading="paper.key.mistakes" note={say('paper.key.mistakesHow')}>
      <ol className="mistakes">
        {played
          .filter((one) => one.role === 'mistake')
          .map((one) => (
            <li key={one.key}>
              <p>
                <b>{one.title}</b>
              </p>
              <ul>
                {one.shown.map((shown, index) => (
                  <Consequence key={index} shown={shown} plan={plan} />
                ))}
              </ul>
              <p className="sheet-note">
                {say('paper.key.scores', { fish: whole(one.fishHealth), harvest: whole(one.harvest), n: one.marks })}
              </p>
            </li>
          ))}
      </ol>
      {idle !== undefined && (
        <p className="sheet-note">{say('paper.key.idle', { fish: whole(idle.fishHealth), harvest: whole(idle.harvest), n: idle.marks })}</p>
      )}
    </Part>
  );
}

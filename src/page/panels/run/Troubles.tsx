// What is wrong right now, worst first; choosing one shows its stage, and its quantity if a tint has it.
import { TINTS, TINT_ORDER } from '../../state/common/tints';
import { troublesNow, type Trouble } from '../../state/run/troubles';
import { say } from '../../../words/say';
import { MarkShape } from '../common/marks';
import { useMedia } from '../common/media';
import { useMoment } from '../common/moment';
import { useLived, usePage } from '../common/pageStore';
import { troubleWords } from '../common/troubleWords';

export function Troubles() {
  const select = usePage((page) => page.select);
  const setTint = usePage((page) => page.setTint);
  const plan = useLived((lived) => lived.plan);
  const season = useLived((lived) => lived.season);
  const comfort = useLived((lived) => lived.comfort);
  const now_h = useMoment();
  const wide = useMedia('(min-width: 1600px)');
  const usual = useMedia('(min-width: 1200px)');
  const room = wide ? 3 : usual ? 2 : 1;
  const troubles = troublesNow({ plan, season, comfort, now_h });
  const show = (trouble: Trouble): void => {
    select(trouble.stage);
    const tint = trouble.kind === 'band' ? TINT_ORDER.find((one) => TINTS[one].judged.includes(trouble.variable)) : undefined;
    if (tint !== undefined) setTint(tint);
  };
  return (
    <div className="troubles" role="group" aria-label={say('trouble.title')}>
      {troubles.length === 0 && (
        <p className="trouble-none">
          <MarkShape mark="fine" named={false} /> {say('trouble.none')}
        </p>
      )}
      {troubles.slice(0, room).map((trouble) => (
        <button
          type="button"
          className="trouble"
          data-mark={trouble.mark}
          key={trouble.kind === 'band' ? `${trouble.stage} ${trouble.variable}` : `${trouble.stage} ${trouble.event}`}
          onClick={() => show(trouble)}
        >
          <MarkShape mark={trouble.mark} />
          <span>{troubleWords(plan, trouble)}</span>
        </button>
      ))}
      {troubles.length > room && <span className="note">{say('trouble.more', { n: troubles.length - room })}</span>}
    </div>
  );
}

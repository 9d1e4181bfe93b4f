// One score as it accrues, on a bar from 0 to 100 with the thresholds of the marks.
import { say } from '../../../words/say';
import { whole } from '../../../words/units';

interface Props {
  name: string;
  picture: string;
  value: number | null;
  marks: readonly number[];
  detail: string;
  kind: 'fish' | 'harvest' | 'gain';
}

export function ScoreMeter({ name, picture, value, marks, detail, kind }: Props) {
  const shown = value === null ? '–' : whole(value);
  return (
    <div className="meter" data-kind={kind}>
      <div className="meter-head">
        <img src={picture} alt="" width={40} height={26} />
        <span className="label">{name}</span>
        <b className="meter-value">{shown}</b>
      </div>
      <div
        className="bar"
        role="meter"
        aria-label={name}
        aria-valuemin={0}
        aria-valuemax={100}
        aria-valuenow={Math.round(value ?? 0)}
        aria-valuetext={value === null ? say('brief.notYet') : say('brief.outOf', { value: shown })}
      >
        <i style={{ width: `${Math.min(100, Math.max(0, value ?? 0))}%` }} />
        {marks.map((mark, index) => (
          <u key={index} style={{ left: `${Math.min(100, mark)}%` }} />
        ))}
      </div>
      <p className="note">{detail}</p>
    </div>
  );
}

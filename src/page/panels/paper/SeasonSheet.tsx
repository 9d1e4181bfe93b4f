// The summary of the learner's own season: scores and marks, the loop, what was done and when, the water's course, what befell.
import type { Lesson, Plan } from '../../state/common/contract';
import { branchLetter } from '../../state/run/branches';
import { lastHour, scoresAt } from '../../state/common/selectors';
import type { SeasonView } from '../../state/common/state';
import { say, sayOr } from '../../../words/say';
import { stageName } from '../../../words/stageNames';
import { figure, whole } from '../../../words/units';
import { useLived } from '../common/pageStore';
import { deedLines, doserLine, ownActions, type DeedLine } from './deedWords';
import { happenings } from './happenings';
import { MarkTable } from './MarkTable';
import { CautionBox, LoopStrip, Part, SheetHead } from './pieces';
import { SeasonPredictions } from './SeasonPredictions';
import { TraceFigure, type TraceWish } from './TraceFigure';
import { can } from '../../state/common/kinds';

function Deeds({ lines }: { lines: readonly DeedLine[] }) {
  return (
    <ul className="deeds">
      {lines.map((line, index) => (
        <li key={index}>
          <b>{line.when}</b> {line.what}
        </li>
      ))}
    </ul>
  );
}

function Done({ plan, lesson, lived_h }: { plan: Plan; lesson: Lesson; lived_h: number }) {
  const { own, given } = ownActions(plan, lesson);
  const doser = doserLine(plan);
  const lines = [...(doser === null ? [] : [doser]), ...deedLines(plan, own, lived_h)];
  return (
    <Part id="done" heading="paper.season.done">
      {lines.length === 0 ? <p>{say('paper.season.nothing')}</p> : <Deeds lines={lines} />}
      {given.length > 0 && (
        <>
          <p className="label">{say('paper.season.given')}</p>
          <Deeds lines={deedLines(plan, given, lived_h)} />
        </>
      )}
    </Part>
  );
}

function Happened({ plan, season, lived_h }: { plan: Plan; season: SeasonView; lived_h: number }) {
  const all = [...plan.loop, ...plan.side];
  const found = happenings(season, lived_h);
  return (
    <Part id="happened" heading="paper.season.happened">
      {found.length === 0 ? (
        <p>{say('paper.season.calm')}</p>
      ) : (
        <ul>
          {found.map((one) => {
            const values = {
              day: one.day,
              what: sayOr(`event.${one.kind}`, 'stage.unknown.name'),
              stage: stageName(all, one.stage),
              n: one.times,
            };
            return (
              <li key={`${one.kind} ${one.stage}`}>
                {one.kind === 'fishDied'
                  ? say('paper.season.died', { ...values, n: figure(one.amount, 0) })
                  : say('paper.season.events', values)}
              </li>
            );
          })}
        </ul>
      )}
    </Part>
  );
}

/** The quantities that tell most of a season: of the fish's water, and of the first bed's roots. */
function wishes(plan: Plan): TraceWish[] {
  const fish = plan.loop.find((stage) => can(stage.kind, 'keepsFish')) ?? plan.loop.find((stage) => !can(stage.kind, 'pumps'));
  const bed = plan.loop.find((stage) => can(stage.kind, 'grows'));
  const at = (stage: Plan['loop'][number] | undefined, variables: readonly string[]): TraceWish[] =>
    stage === undefined ? [] : variables.map((variable) => ({ variable, stageId: stage.id, stage: stageName(plan.loop, stage.id) }));
  return [
    ...at(fish, ['TAN_mgN_L', 'NO2_mgN_L', 'NO3_mgN_L', 'O2_mg_L', 'pH']),
    ...at(bed ?? fish, [bed === undefined ? 'solids' : 'rootMat_g_m2']),
  ];
}

export function SeasonSheet() {
  const { lesson, plan, season, lived_h, comfort, present: branch, branches } = useLived((lived) => lived);
  const several = branches.length > 1;
  const day = Math.floor(lived_h / 24 + 1e-9);
  const scores = scoresAt(season, lived_h);
  const over = lived_h >= lastHour(plan);
  return (
    <>
      <SheetHead
        title={say('paper.season.sub', { lesson: lesson.title })}
        sub={say(several ? 'paper.season.branch' : 'paper.season.lived', { branch: branchLetter(branch), day, days: plan.days })}
        named
      />
      {scores !== null && (
        <div className="sheet-scores">
          <p>
            <span>{say('brief.fishHealth')}</span>
            <b>{whole(scores.fishHealth)}</b>
          </p>
          <p>
            <span>{say('brief.harvest')}</span>
            <b>{whole(scores.harvest)}</b>
          </p>
          {over ? <MarkTable lesson={lesson} plan={plan} /> : <p className="sheet-note">{say('paper.season.open', { day })}</p>}
        </div>
      )}
      <Part id="loop" heading="paper.season.loop">
        <LoopStrip stages={plan.loop} />
      </Part>
      <Part id="water" heading="paper.season.water" note={say('paper.season.waterNote', { days: plan.days })}>
        <div className="trace-grid">
          {wishes(plan).map((wish) => (
            <TraceFigure key={wish.variable} wish={wish} season={season} comfort={comfort} lived_h={lived_h} last_h={lastHour(plan)} />
          ))}
        </div>
      </Part>
      <div className="sheet-columns">
        <Done plan={plan} lesson={lesson} lived_h={lived_h} />
        <Happened plan={plan} season={season} lived_h={lived_h} />
      </div>
      {lesson.predictions.length > 0 && <SeasonPredictions lesson={lesson} plan={plan} over={over} />}
      <Part id="think" heading="paper.season.think">
        <i className="line" />
        <i className="line" />
      </Part>
      <CautionBox kinds={[...plan.loop, ...plan.side].map((stage) => stage.kind)} />
    </>
  );
}

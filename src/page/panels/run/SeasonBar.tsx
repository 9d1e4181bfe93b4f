// The bar at the foot while a season runs: the clock and its speeds, the rail of days, the traces.
import { useEffect, useRef, useState } from 'react';
import { eventsUntil, selectable } from '../../state/common/selectors';
import type { Speed } from '../../state/common/state';
import { say } from '../../../words/say';
import { stageName } from '../../../words/stageNames';
import { momentOf } from '../../../words/units';
import { Branches } from './BranchList';
import { SignShape } from '../common/icons';
import { Later } from '../common/Later';
import { useMoment } from '../common/moment';
import { useLived, usePage } from '../common/pageStore';
import { Scrubber } from './Scrubber';
import { Traces } from './Traces';

const SPEEDS: readonly Exclude<Speed, 'paused'>[] = ['hours6', 'day1', 'days5'];

function Clock() {
  const days = useLived((lived) => lived.plan.days);
  const busy = useLived((lived) => lived.busy);
  const now_h = useMoment();
  const { day, clock } = momentOf(now_h);
  return (
    <div className="clock">
      <p className="day">
        <b>{say('season.day', { day })}</b> <span className="note">{say('season.of', { days })}</span>
      </p>
      <p className="note">
        {say('season.clock', { hour: clock })}
        {busy ? ` · ${say('season.busy')}` : ''}
      </p>
    </div>
  );
}

function Transport() {
  const setSpeed = usePage((page) => page.setSpeed);
  const stepDay = usePage((page) => page.stepDay);
  const speed = useLived((lived) => lived.speed);
  const pace = useLived((lived) => lived.pace);
  const toggle = useRef<HTMLButtonElement>(null);
  // the button that began the season is gone: keyboards go on from its clock
  useEffect(() => toggle.current?.focus({ preventScroll: true }), []);
  const running = speed !== 'paused';
  return (
    <div className="transport">
      <button
        ref={toggle}
        type="button"
        className="btn go square"
        aria-label={say(running ? 'season.pause' : 'season.run')}
        title={say(running ? 'season.pause' : 'season.run')}
        data-toggle-run
        onClick={() => setSpeed(running ? 'paused' : pace)}
      >
        <SignShape sign={running ? 'pause' : 'run'} />
      </button>
      <button type="button" className="btn square" aria-label={say('season.step')} title={say('season.step')} onClick={() => stepDay()}>
        <SignShape sign="step" />
      </button>
      <div className="speeds" role="group" aria-label={say('season.speed')}>
        {SPEEDS.map((one) => (
          <button type="button" key={one} className="btn" aria-pressed={speed === one} onClick={() => setSpeed(one)}>
            {say(`season.${one}`)}
          </button>
        ))}
      </div>
    </div>
  );
}

/** What happened until now, in words; put together only when it is asked for. */
function LogDialog({ onClose }: { onClose: () => void }) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  const season = useLived((lived) => lived.season);
  const plan = useLived((lived) => lived.plan);
  const lived_h = useLived((lived) => Math.floor(lived.lived_h));
  const stages = selectable(plan);
  const events = eventsUntil(season, lived_h);
  return (
    <dialog ref={dialog} className="card ask" aria-labelledby="log-title" onClose={onClose}>
      <h2 id="log-title">{say('event.log')}</h2>
      {events.length === 0 ? (
        <p>{say('event.noneYet')}</p>
      ) : (
        <ol className="plain log-lines" tabIndex={0} aria-labelledby="log-title">
          {events.map((event, index) => {
            const { day, clock } = momentOf(event.hour);
            const what = say(`event.${event.kind}`);
            const at = stages.some((stage) => stage.id === event.stage);
            return (
              <li key={index}>
                {at
                  ? say('event.lineAt', { day, hour: clock, what, stage: stageName(stages, event.stage) })
                  : say('event.line', { day, hour: clock, what })}
              </li>
            );
          })}
        </ol>
      )}
      <button type="button" className="btn" onClick={() => dialog.current?.close()}>
        {say('page.close')}
      </button>
    </dialog>
  );
}

function Log() {
  const [open, setOpen] = useState(false);
  return (
    <>
      <button type="button" className="btn log" onClick={() => setOpen(true)}>
        {say('event.logShort')}
      </button>
      {open && <LogDialog onClose={() => setOpen(false)} />}
    </>
  );
}

export function SeasonBar() {
  return (
    <section className="bottom season-bar" aria-label={say('season.region')}>
      <div className="season-hand">
        <div className="season-top">
          <Clock />
          <div className="season-books">
            <Log />
            <Branches />
          </div>
        </div>
        <Transport />
      </div>
      <div className="season-days">
        <Scrubber />
        <Later frames={3}>
          <Traces />
        </Later>
      </div>
    </section>
  );
}

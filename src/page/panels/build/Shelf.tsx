// The parts shelf: what each part does, what people get wrong about it, and two ways to place it.
import { useId, useState } from 'react';
import type { Plan, StageSpec } from '../../state/common/contract';
import { catalogueOf, shelfParts } from '../../state/common/selectors';
import { say, sayOr } from '../../../words/say';
import { kindName, stageName } from '../../../words/stageNames';
import { useDragPart } from './dragPart';
import { useBuild, usePage, usePageStore } from '../common/pageStore';
import { STAGE_PICTURES } from '../common/pictures';

function PlaceControl({ part, plan }: { part: StageSpec; plan: Plan }) {
  const store = usePageStore();
  const [gap, setGap] = useState(1);
  const chosen = Math.min(gap, plan.loop.length);
  const name = kindName(part.kind);
  return (
    <div className="place">
      <select aria-label={say('build.placeWhere', { part: name })} value={chosen} onChange={(event) => setGap(Number(event.target.value))}>
        {plan.loop.map((stage, index) => (
          <option key={stage.id} value={index + 1}>
            {say('build.after', { stage: stageName(plan.loop, stage.id) })}
          </option>
        ))}
      </select>
      <button
        type="button"
        className="btn"
        aria-label={say('build.placePart', { part: name })}
        onClick={() => {
          store.getState().place(part.id, chosen);
          // the card is gone: keyboards go on from the head of the shelf
          document.getElementById('shelf-title')?.focus();
        }}
      >
        {say('build.place')}
      </button>
    </div>
  );
}

function ShelfPart({ part, plan }: { part: StageSpec; plan: Plan }) {
  const startDrag = useDragPart();
  const inHand = useBuild((build) => build.drag?.stage.id === part.id);
  const title = useId();
  const name = kindName(part.kind);
  return (
    <li className="part card" data-part={part.id} data-in-hand={inHand || undefined} aria-labelledby={title}>
      <div className="part-handle" title={say('build.drag', { part: name })} onPointerDown={(event) => startDrag(event, part.id)}>
        <img src={STAGE_PICTURES[part.kind]} alt="" draggable={false} width={94} height={74} />
        <div>
          <h3 id={title}>{name}</h3>
          <p>{sayOr(`stage.${part.kind}.does`, 'stage.unknown.name')}</p>
        </div>
      </div>
      <p className="mistake">
        <b>{say('build.mistake')}</b> {sayOr(`stage.${part.kind}.mistake`, 'stage.unknown.name')}
      </p>
      <PlaceControl part={part} plan={plan} />
    </li>
  );
}

export function Shelf() {
  const lesson = useBuild((build) => build.lesson);
  const plan = useBuild((build) => build.plan);
  const catalogue = usePage(catalogueOf);
  const parts = shelfParts(lesson, plan);
  const groupOf = (part: StageSpec): string => catalogue.find((entry) => entry.kind === part.kind)?.group ?? 'treatWater';
  const groups = [...new Set(parts.map(groupOf))];
  return (
    <section className="shelf" aria-labelledby="shelf-title">
      <h2 id="shelf-title" tabIndex={-1}>
        {say('build.shelf')}
      </h2>
      {parts.length === 0 && <p className="note">{say('build.empty')}</p>}
      {groups.map((group) => (
        <div key={group} className="shelf-group">
          <p className="group-name">{sayOr(`group.${group}`, 'group.treatWater')}</p>
          <ul className="plain">
            {parts
              .filter((part) => groupOf(part) === group)
              .map((part) => (
                <ShelfPart key={part.id} part={part} plan={plan} />
              ))}
          </ul>
        </div>
      ))}
    </section>
  );
}

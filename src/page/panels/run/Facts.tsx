// What else there is to know of a stage right now, beside its water: who lives there, what it holds, how it fares.
import type { Plan } from '../../state/common/contract';
import { lastDone_h } from '../../state/run/inForce';
import { readingAt } from '../../state/run/readings';
import type { SeasonView } from '../../state/common/state';
import { listText } from '../../../words/language';
import { isWord, say, sayOr } from '../../../words/say';
import { withUnit } from '../../../words/units';
import { can } from '../../state/common/kinds';
import { useMoment } from '../common/moment';

/** What is told of a stage besides its water, by what it can do. */
const FACTS: readonly (readonly [Parameters<typeof can>[1], readonly string[]])[] = [
  ['keepsFish', ['number', 'mass_g', 'eaten_g_d', 'welfare', 'NH3_mgN_L', 'T_C']],
  ['grows', ['rootHealth', 'rootRot', 'rootO2_mg_L', 'rootMat_g_m2', 'leafDry_g_m2', 'cut_kg', 'leafStore', 'Fe_mg_L']],
  ['lowest', ['alkalinity_meq_L', 'flow_m3_d', 'T_C', 'dose_g_d']],
  ['takesSolids', ['sludge_g', 'PO4_mgP_L', 'gas_L_d']],
  ['lamp', ['freeBacteria']],
  ['pumps', []],
  ['doses', []],
  ['drains', ['sludge_g', 'sludgeFill', 'gas_L_d']],
  ['cleanedBy', ['caught_g', 'clog']],
];
/** Of a stage that only treats the water. */
const OF_FILM = ['alkalinity_meq_L', 'caught_g'];
const factsOf = (kind: string): readonly string[] => FACTS.find(([what]) => can(kind, what))?.[1] ?? OF_FILM;

/** The species in a tank or the crop on a bed, in words; empty elsewhere. */
function livesHere(plan: Plan, stageId: string, now_h: number): string {
  const put = plan.actions.flatMap((action) => (action.do === 'stock' && lastDone_h(action, now_h) >= 0 ? [action] : []));
  const species = [
    ...new Set(
      [...plan.fish, ...put]
        .filter((group) => group.tank === stageId)
        .map((group) => sayOr(`species.${group.species}`, 'stage.unknown.name')),
    ),
  ];
  const crop = plan.loop.find((stage) => stage.id === stageId)?.crop;
  if (crop !== undefined)
    return say('crop.planted', { crop: sayOr(`crop.${crop.kind}`, 'stage.unknown.name'), density: withUnit('plants_m2', crop.plants_m2) });
  return listText(species);
}

export function Facts({ view, stageId, kind, plan }: { view: SeasonView; stageId: string; kind: string; plan: Plan }) {
  const now_h = useMoment();
  const facts = factsOf(kind).filter((variable) => view.column[variable] !== undefined);
  const lives = livesHere(plan, stageId, now_h);
  if (facts.length === 0) return null;
  return (
    <>
      {lives !== '' && <p className="lives">{lives}</p>}
      <dl className="facts" aria-label={say('inspect.facts')}>
        {facts.map((variable) => {
          const key = `variable.${variable}`;
          return (
            <div key={variable}>
              <dt>{isWord(key) ? say(key) : variable}</dt>
              <dd>{withUnit(variable, readingAt(view, stageId, variable, now_h, 'inside'))}</dd>
            </div>
          );
        })}
      </dl>
    </>
  );
}

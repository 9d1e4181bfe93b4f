// Where a variant lost most against its reference, and what the engine recorded of trouble that the reference was spared.
import type { TroubleHours } from '../season/troubleHours';
import type { Mishap, Outcome, Standing } from './playVariant';

/**
 * points: how many were lost; design: what is wrong with the loop before any water flows; fallen: what plants or fish grow by and had less
 * of, beside the reference's mean; trouble: the limit that was the worst one passed for more hours.
 */
export interface Loss {
  score: 'fishHealth' | 'harvest';
  points: number;
  design: Outcome['design'];
  mishaps: Mishap[];
  fallen: (Standing & { reference: number })[];
  trouble: (TroubleHours & { extra_h: number }) | null;
}

/** Points below which nothing is said to be lost: they do not show in the table. */
const LEAST = 0.05;
/** What differs by less is as good as alike: shares of a mean, and of the season's hours. */
const LEAST_FALL = 0.01;
const LEAST_TIME = 0.02;

/** What is measured against where there is nothing to compare with: nothing lost, nothing wrong. */
const SPARED: Outcome = {
  result: { fishHealth: 100, harvest: 100, short: { plants: 0, gain: 0 }, marks: null, work_h: 0, hours: 0 },
  refused: null,
  design: [],
  mishaps: [],
  standings: [],
  troubles: [],
};

/** The limit that led for the most hours beyond those of the reference; those to act on before those to watch. */
function worstTrouble(own: Outcome, than: Outcome, applies: TroubleHours['applies']): Loss['trouble'] {
  const extra = own.troubles
    .filter((trouble) => trouble.applies === applies)
    .map((trouble) => {
      const known = than.troubles.find((one) => key(one) === key(trouble));
      return { trouble, act_h: trouble.act_h - (known?.act_h ?? 0), watch_h: trouble.watch_h - (known?.watch_h ?? 0) };
    });
  const most = (hours: 'act_h' | 'watch_h'): (typeof extra)[number] | undefined =>
    extra.filter((one) => one[hours] > 0 && one[hours] >= LEAST_TIME * (own.result?.hours ?? 0)).sort((a, b) => b[hours] - a[hours])[0];
  const [acted, watched] = [most('act_h'), most('watch_h')];
  if (acted !== undefined) return { ...acted.trouble, extra_h: acted.act_h };
  return watched === undefined ? null : { ...watched.trouble, extra_h: watched.watch_h };
}

const key = ({ stage, variable, side }: TroubleHours): string => `${stage} ${variable} ${side}`;

/** @param than the reference; null where the reference itself is asked about @returns null where nothing is lost or nothing was played */
export function lossOf(own: Outcome, reference: Outcome | null): Loss | null {
  const than = reference ?? SPARED;
  if (own.result === null || than.result === null) return null;
  const lost = { fishHealth: than.result.fishHealth - own.result.fishHealth, harvest: than.result.harvest - own.result.harvest };
  const score = lost.fishHealth > lost.harvest ? 'fishHealth' : 'harvest';
  if (lost[score] < LEAST) return null;
  const [plants, gain] = [own.result.short.plants - than.result.short.plants, own.result.short.gain - than.result.short.gain];
  const applies = score === 'fishHealth' || gain > plants ? 'fish' : 'roots';
  const told = (kind: string, stage: string): string => `${kind} ${stage}`;
  const known = new Set([...than.design.map((one) => told(one.key, one.stage)), ...than.mishaps.map((one) => told(one.kind, one.stage))]);
  return {
    score,
    points: lost[score],
    design: own.design.filter((one) => !known.has(told(one.key, one.stage))),
    mishaps: own.mishaps.filter((one) => !known.has(told(one.kind, one.stage))),
    fallen: own.standings.flatMap((one) => {
      const other = than.standings.find(({ stage, variable }) => stage === one.stage && variable === one.variable);
      // fish that eat less grow less, but are not the worse for it
      const asks = one.variable === 'eaten_g_d' ? score === 'harvest' && applies === 'fish' : applies === 'roots';
      return asks && other !== undefined && one.mean < (1 - LEAST_FALL) * other.mean ? { ...one, reference: other.mean } : [];
    }),
    trouble: worstTrouble(own, than, applies),
  };
}

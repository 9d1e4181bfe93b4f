// The action log by day: every deed at its hour, in the order the plan lists them.
import type { Action, Deed, Plan } from './plan';

export interface Due {
  hour: number;
  deed: Deed;
  byPerson: boolean;
}

/** Deeds due on a day, by hour; stockings of the plan come first. */
export function dueOn(plan: Plan, day: number): Due[] {
  const due: Due[] = [];
  for (const stocking of plan.fish) {
    if (stocking.day === day)
      due.push({
        hour: 0,
        deed: {
          do: 'stock',
          tank: stocking.tank,
          species: stocking.species,
          number: stocking.number,
          mass_g: stocking.mass_g,
          ...(stocking.unit === undefined ? {} : { unit: stocking.unit }),
        },
        byPerson: false,
      });
  }
  for (const action of plan.actions) {
    if (fallsOn(action, day)) due.push({ hour: action.hour ?? 0, deed: action, byPerson: action.every_d === undefined });
  }
  return due
    .map((entry, index) => ({ entry, index }))
    .sort((a, b) => a.entry.hour - b.entry.hour || a.index - b.index)
    .map(({ entry }) => entry);
}

function fallsOn(action: Action, day: number): boolean {
  if (action.every_d === undefined) return (action.day ?? 0) === day;
  const from = action.from ?? action.day ?? 0;
  return day >= from && day <= (action.to ?? Infinity) && (day - from) % action.every_d === 0;
}

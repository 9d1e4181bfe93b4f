// Base dosing: a can of base beside the loop that drips into one of its tanks, as much as the pH asks.
import type { KindFacts } from '../../../model/stages/stageKind';

export const kind: KindFacts = { group: 'dosePolish', controls: ['base'], airMax_L_min: 0, cautions: ['caustic'], sizes: {}, doses: true };

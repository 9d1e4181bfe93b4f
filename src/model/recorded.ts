// All numbers as recorded: what a stage is before any run, and what tests reckon with.
import { valuesWith } from './parameters/values';
import type { Values } from './parameters/values';

export const RECORDED: Values = valuesWith();

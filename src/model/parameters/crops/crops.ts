// The crops a person can plant. A new one is a new record with the same keys.
import type { Parameter } from '../parameter';
import { basil } from './basil';
import { chard } from './chard';
import { lettuce } from './lettuce';
import { tomato } from './tomato';

export type CropParameters = Readonly<Record<keyof typeof lettuce, Parameter>>;

export const CROPS = { lettuce, basil, chard, tomato } as const satisfies Record<string, CropParameters>;

export type CropName = keyof typeof CROPS;

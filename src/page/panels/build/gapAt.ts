// Which gap of the loop lies under the pointer: only the picture knows, and the page's root hands its answer in.
import { createContext, useContext } from 'react';

export type GapAt = (clientX: number, clientY: number) => number | null;

export const GapAtContext = createContext<GapAt>(() => null);

export function useGapAt(): GapAt {
  return useContext(GapAtContext);
}

// What may come a moment after the rest of a screen: mounted in frames of its own, so that no screen's arrival holds up the page.
import { startTransition, useEffect, useState, type ReactNode } from 'react';

const FRAME_ms = 17;

/** @param frames how many frames after the screen it is mounted */
export function Later({ frames, children }: { frames: number; children: ReactNode }) {
  const [left, setLeft] = useState(frames);
  useEffect(() => {
    if (left === 0) return undefined;
    const timer = setTimeout(() => startTransition(() => setLeft(left - 1)), FRAME_ms);
    return () => clearTimeout(timer);
  }, [left]);
  return left === 0 ? children : null;
}

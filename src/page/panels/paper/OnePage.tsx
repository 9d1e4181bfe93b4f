// Sets what stands on a sheet a little smaller where that saves a page: measured on the paper that is chosen.
import { useLayoutEffect, useRef, useState, type ReactNode } from 'react';
import type { PaperSize } from '../../state/paper/sheets';

/** Room for text on one page, CSS pixels: 297 mm or 11 in, less the margins of 13 and 15 mm. */
const PAGE_HEIGHT: Readonly<Record<PaperSize, number>> = { A4: 1016, Letter: 950 };
const STEP = 0.02;

/**
 * The largest scale at which a height fits on a page; 1 where even the least does not.
 * @param heightAt height of the contents at a scale, in the pixels of the page
 */
export function fitScale(heightAt: (scale: number) => number, room: number, least: number): number {
  for (let step = 0; 1 - step * STEP >= least - 1e-9; step += 1) {
    const scale = 1 - step * STEP;
    if (heightAt(scale) <= room) return scale;
  }
  return 1;
}

/** @param least the smallest scale at which the sheet may be set to stay on one page */
export function OnePage({ size, least, children }: { size: PaperSize; least: number; children: ReactNode }) {
  const place = useRef<HTMLDivElement>(null);
  const [scale, setScale] = useState(1);
  useLayoutEffect(() => {
    const fit = (): void => {
      const element = place.current;
      if (element === null) return;
      const shown = element.style.zoom;
      const found = fitScale(
        (tried) => {
          element.style.zoom = String(tried);
          return element.offsetHeight * tried;
        },
        PAGE_HEIGHT[size],
        least,
      );
      element.style.zoom = shown;
      setScale(found);
    };
    fit();
    // letters and pictures arrive late, and what the worker finds later still
    void document.fonts.ready.then(fit);
    const watch = new MutationObserver(fit);
    if (place.current !== null) watch.observe(place.current, { childList: true, characterData: true, subtree: true });
    return () => watch.disconnect();
  }, [size, least]);
  return (
    <div ref={place} className="one-page" style={{ zoom: scale }}>
      {children}
    </div>
  );
}

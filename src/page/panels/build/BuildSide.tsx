// The columns beside the picture while building: parts and loop side by side where there is room, else as two tabs.
import { useEffect, useId, useRef, useState, type KeyboardEvent } from 'react';
import { buildOf, shelfParts } from '../../state/common/selectors';
import type { Build } from '../../state/build/build';
import { say } from '../../../words/say';
import { LoopList } from './LoopList';
import { useBuild, usePage, usePageStore } from '../common/pageStore';
import { Shelf } from './Shelf';

type Tab = 'parts' | 'loop';
const TABS: readonly Tab[] = ['parts', 'loop'];

/** Whether every part stands in the loop already. */
const nothingLeft = ({ lesson, plan }: Build): boolean => shelfParts(lesson, plan).length === 0;

/** Parts and loop behind two tabs; selecting a stage in the picture turns to the loop. */
export function BuildTabs() {
  const [tab, setTab] = useState<Tab>('parts');
  const selected = usePage((page) => page.view.selected);
  const lesson = useBuild((build) => build.lesson);
  const before = useRef({ selected, lesson });
  const page = usePageStore();
  const id = useId();
  useEffect(() => {
    // a lesson that opens comes with a selection of its own; its parts come first
    if (lesson !== before.current.lesson) {
      const build = buildOf(page.getState());
      setTab(build !== null && nothingLeft(build) ? 'loop' : 'parts');
    } else if (selected !== before.current.selected && selected !== null) setTab('loop');
    before.current = { selected, lesson };
  }, [selected, lesson, page]);
  const turn = (event: KeyboardEvent<HTMLButtonElement>): void => {
    if (event.key !== 'ArrowLeft' && event.key !== 'ArrowRight') return;
    const next = tab === 'parts' ? 'loop' : 'parts';
    setTab(next);
    document.getElementById(`${id}-${next}`)?.focus();
  };
  return (
    <aside className="left" aria-label={say('build.region')}>
      <div className="tabs" role="tablist" aria-label={say('build.region')}>
        {TABS.map((one) => (
          <button
            key={one}
            type="button"
            role="tab"
            id={`${id}-${one}`}
            aria-selected={tab === one}
            aria-controls={`${id}-panel`}
            tabIndex={tab === one ? 0 : -1}
            onClick={() => setTab(one)}
            onKeyDown={turn}
          >
            {say(`build.tab.${one}`)}
          </button>
        ))}
      </div>
      <div className="scroll" role="tabpanel" id={`${id}-panel`} aria-labelledby={`${id}-${tab}`} tabIndex={0}>
        {tab === 'parts' ? <Shelf /> : <LoopList />}
      </div>
    </aside>
  );
}

// The part in the hand, under the pointer, wherever on the page it is; over a gap the picture shows where it would stand.
import { usePage } from './pageStore';
import { STAGE_PICTURES } from './pictures';

export function DragGhost() {
  const drag = usePage((page) => page.drag);
  if (drag === null) return null;
  return <img className="drag-ghost" data-over-gap={drag.overGap !== null || undefined} src={STAGE_PICTURES[drag.stage.kind]} alt="" style={{ transform: `translate(${drag.x}px, ${drag.y}px) translate(-50%, -50%) rotate(4deg)` }} />;
}

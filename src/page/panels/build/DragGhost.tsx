// The part in the hand, under the pointer, outside the picture; over the picture the world draws it itself.
import { dragOf } from '../../state/common/selectors';
import { usePage } from '../common/pageStore';
import { STAGE_PICTURES } from '../common/pictures';

/** Whether the picture draws at a point; false where there is no picture. */
function overPicture(x: number, y: number): boolean {
  const box = document.querySelector('#world canvas')?.getBoundingClientRect();
  return box !== undefined && x >= box.left && x <= box.right && y >= box.top && y <= box.bottom;
}

export function DragGhost() {
  const drag = usePage(dragOf);
  if (drag === null || overPicture(drag.x, drag.y)) return null;
  return (
    <img
      className="drag-ghost"
      src={STAGE_PICTURES[drag.stage.kind]}
      alt=""
      style={{ transform: `translate(${drag.x}px, ${drag.y}px) translate(-50%, -50%) rotate(4deg)` }}
    />
  );
}

// Fish that the lesson offers for a tank: put in from the start while building, or at the hour a person thinks the water is ready.
import { fishWords, stocked } from '../../state/build/stocking';
import { say } from '../../../words/say';
import { useOpened, usePage } from './pageStore';
import { useGuard } from '../run/past';

export function StockControl({ tank }: { tank: string }) {
  const stock = usePage((page) => page.stock);
  const lesson = useOpened((game) => game.lesson);
  const plan = useOpened((game) => game.plan);
  const building = useOpened((game) => game.mode === 'build');
  const guard = useGuard();
  if (!lesson.stocks.some((offer) => offer.tank === tank)) return null;
  const put = stocked(lesson, plan);
  return (
    <div className="controls" role="group" aria-label={say('stock.title')}>
      {lesson.stocks.map((offer, index) => {
        if (offer.tank !== tank) return null;
        const fish = fishWords(offer);
        if (!put.has(index))
          return (
            <button key={index} type="button" className="btn" onClick={() => guard(() => stock(index))}>
              {say('stock.put', { fish })}
            </button>
          );
        if (!building)
          return (
            <p key={index} className="note">
              {say('stock.in', { fish })}
            </p>
          );
        return (
          <div key={index} className="stock-in">
            <p className="note">{say('stock.fromStart', { fish })}</p>
            <button type="button" className="btn" aria-label={say('stock.leaveOut', { fish })} onClick={() => stock(index)}>
              {say('stock.leaveOutShort')}
            </button>
          </div>
        );
      })}
    </div>
  );
}

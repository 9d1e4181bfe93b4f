// The worker: reads lessons, checks designs, runs seasons. Answers every request once, with its id; an error answers too.
import { givenOrder, planOf } from '../lessons/buildPlan';
import { outcomeOf, pairOf } from '../lessons/demonstration';
import { withLines } from '../lessons/jsonPlace';
import { marksMet } from '../lessons/marks';
import { measure } from '../lessons/measure';
import { playLesson } from '../lessons/playLesson';
import { movesBetween } from '../lessons/moves';
import { settle } from '../lessons/predictions';
import { readLesson } from '../lessons/readLesson';
import { comfortOf } from '../season/comfort';
import { checkDesign } from '../season/designCheck';
import type { Plan } from '../season/plan';
import { runSeason } from '../season/season';
import { catalogueEntries } from './catalogueEntries';
import { createRuns } from './engineRuns';
import { processFacts } from './processFacts';
import { replyTo } from './reply';
import type { Answers, Request, ToWorker } from './messages';

const runs = createRuns();

function answer(request: Request): Answers[keyof Answers] {
  switch (request.ask) {
    case 'catalogue':
      return catalogueEntries();
    case 'processes':
      return processFacts();
    case 'openLesson': {
      const read = readLesson(request.text, request.language);
      if ('problems' in read) return { problems: withLines(request.text, read.problems) };
      warmUp(read.lesson.plan);
      return read;
    }
    case 'checkDesign':
      return checkDesign(request.plan);
    case 'comfort':
      return comfortOf(request.plan);
    case 'run':
      return runs.run(request.plan, request.keepDays, request.plantsWeight);
    case 'judge': {
      const { lesson, plan, untilDay } = request;
      const season = runs.run(plan, 0, lesson.scoring.plantsWeight);
      const days = season.days.slice(0, untilDay);
      const scores = days.at(-1)?.scores ?? season.summary.scores;
      return {
        marks: marksMet(
          scores,
          { ...season, days },
          plan.loop.map((stage) => stage.id),
          lesson,
        ),
        predictions: untilDay === undefined ? lesson.predictions.map((prediction) => settle(season, prediction)) : [],
      };
    }
    case 'moves':
      return movesBetween(givenOrder(request.lesson), request.built);
    case 'readLesson':
      return readLesson(request.text, request.language);
    case 'pair':
      return pairOf(request.lesson, request.shown);
    case 'compare': {
      const [left, right] = request.plans.map((plan) => measure(runs.run(plan, 0, request.plantsWeight), request.measure));
      return outcomeOf(left, right, request.choices);
    }
    case 'build':
      return planOf(request.lesson, request.build);
    case 'play':
      return playLesson(request.lesson, (plan) => runSeason(plan));
  }
}

/** A few days lived once, so that the first real season does not wait for the compiler. */
function warmUp(plan: Plan): void {
  setTimeout(() => createRuns().run({ ...plan, days: Math.min(plan.days, 10) }, 0), 0);
}

addEventListener('message', (event: MessageEvent<ToWorker>) => {
  const { message, transfer } = replyTo(event.data, answer);
  postMessage(message, { transfer });
});

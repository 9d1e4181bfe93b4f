// Presenter mode: two loops in step under one clock, votes before the outcome, and steps that a remote walks through.
import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Lesson } from '../../../lessons/lesson';
import { languageTag } from '../../../words/language';
import { say } from '../../../words/say';
import { HOURS_PER_SECOND, LONGEST_FRAME_S } from '../common/clock';
import { TINT_ORDER } from '../common/tints';
import { figuresOf } from './pairFigures';
import { sharedScale } from './pairScale';
import { hourAt } from './presenterSteps';
import { branchPair, preparedPair, stagePair, type Found } from './presenterPair';
import type { LessonText, Presenter, PresenterStore, Shown } from './presenterState';
import { messageOf } from '../run/seasonRuns';
import type { PageStore } from '../common/page';
import type { Client, Speed } from '../common/state';
import { createPageStore } from '../common/store';

/** The clock takes this long to the next prepared moment, s: long enough to watch the loops part. */
const JOURNEY_S = 4;
/** It never hurries less than this, hours a second. */
const LEAST_HURRY = 12;
export const MOST_VOTES = 999;

/** What a screen reader hears when a step begins. */
function told(shown: Shown, index: number): string {
  const step = shown.steps[index];
  const { question, turningPoints } = shown.demonstration;
  switch (step.kind) {
    case 'question':
      return question;
    case 'votes':
      return say('presenter.votes');
    case 'moment':
      return say('presenter.momentSaid', { day: turningPoints[step.index].day, words: turningPoints[step.index].say });
    case 'reveal':
      return say('presenter.reveal');
  }
}

/**
 * @param page the page's own store: whose branches may be shown, and whether motion is unwelcome
 * @param texts the lesson files, read when the list of demonstrations is asked for
 */
export function createPresenter(client: Client, page: StoreApi<PageStore>, texts: readonly LessonText[]): Presenter {
  const sides = [createPageStore(client), createPageStore(client)] as const;
  let wanted = 0;

  const store = createStore<PresenterStore>()((set, get) => {
    const clock = (now_h: number, speed: Speed): void => {
      const { reducedMotion } = page.getState().preferences;
      for (const side of sides) {
        side.setState(({ game, preferences }) => ({
          game: game.mode === 'class' ? { ...game, now_h, lived_h: Math.max(game.lived_h, now_h), speed } : game,
          preferences: { ...preferences, reducedMotion },
        }));
      }
    };
    const fail = (error: unknown): void => set({ busy: false, failure: say('failure.worker', { message: messageOf(error) }) });

    const stage = async (found: () => Promise<Found | null>): Promise<void> => {
      wanted += 1;
      const mine = wanted;
      set({ busy: true, failure: null, outcome: null });
      try {
        const pair = await found();
        if (mine !== wanted) return;
        if (pair === null) {
          set({ busy: false });
          return;
        }
        const shown = await stagePair(client, sides, pair);
        if (mine !== wanted) return;
        const now_h = hourAt(shown.steps[0], shown.demonstration, shown.days);
        set({
          shown,
          busy: false,
          step: 0,
          votes: shown.demonstration.choices.map(() => 0),
          now_h,
          toward: null,
          playing: false,
          announcement: told(shown, 0),
        });
        clock(now_h, 'paused');
        const { measure, choices } = shown.demonstration;
        const outcome = await client.ask({ ask: 'compare', plans: [...shown.plans], measure, choices, plantsWeight: shown.plantsWeight });
        if (mine === wanted) set({ outcome });
      } catch (error) {
        if (mine === wanted) fail(error);
      }
    };

    /** Goes to a step: there the clock hurries on to its hour, or stands there at once when it is back in time or motion is unwelcome. */
    const enter = (step: number): void => {
      const { shown, now_h } = get();
      if (shown === null) return;
      const hour = hourAt(shown.steps[step], shown.demonstration, shown.days);
      const ahead = hour > now_h && !page.getState().preferences.reducedMotion;
      set({
        step,
        playing: false,
        announcement: told(shown, step),
        toward: ahead ? { hour, perSecond: Math.max(LEAST_HURRY, (hour - now_h) / JOURNEY_S) } : null,
        ...(ahead ? {} : { now_h: hour }),
      });
      clock(get().now_h, ahead ? 'days5' : 'paused');
    };

    return {
      lessons: null,
      reading: false,
      busy: false,
      failure: null,
      shown: null,
      step: 0,
      votes: [],
      outcome: null,
      now_h: 0,
      toward: null,
      playing: false,
      announcement: '',

      async readAll() {
        if (get().lessons !== null || get().reading) return;
        set({ reading: true, failure: null });
        const found: Lesson[] = [];
        for (const { name, read } of texts) {
          try {
            const answer = await client.ask({ ask: 'readLesson', text: await read(), language: languageTag() });
            if ('lesson' in answer && answer.lesson.demonstrations.length > 0) found.push(answer.lesson);
            if ('problems' in answer) set({ failure: say('presenter.unreadable', { name }) });
          } catch (error) {
            set({ failure: say('failure.read', { message: messageOf(error) }) });
          }
          set({ lessons: [...found] });
        }
        set({ lessons: found, reading: false });
      },
      async show(lessonId, key) {
        const lesson = get().lessons?.find((one) => one.id === lessonId);
        if (lesson !== undefined) await stage(() => preparedPair(client, lesson, key));
      },
      showBranches: (left, right) => stage(async () => branchPair(page.getState(), left, right)),
      async forth() {
        const { shown, step, lessons, busy } = get();
        if (shown === null || busy) return;
        if (step + 1 < shown.steps.length) {
          enter(step + 1);
          return;
        }
        const all = (lessons ?? []).flatMap((lesson) => lesson.demonstrations.map(({ key }) => ({ lesson: lesson.id, key })));
        const next =
          shown.lesson === null
            ? undefined
            : all[all.findIndex(({ lesson, key }) => lesson === shown.lesson && key === shown.demonstration.key) + 1];
        if (next === undefined) get().choose();
        else await get().show(next.lesson, next.key);
      },
      back() {
        const { shown, step, busy } = get();
        if (shown === null || busy) return;
        if (step > 0) enter(step - 1);
        else get().choose();
      },
      goTo(step) {
        if (step >= 0 && step < (get().shown?.steps.length ?? 0)) enter(step);
      },
      vote: (choice, by) => get().setVotes(choice, (get().votes[choice] ?? 0) + by),
      setVotes(choice, n) {
        const { votes, shown } = get();
        if (shown === null || votes[choice] === undefined || !Number.isFinite(n)) return;
        const count = Math.max(0, Math.min(MOST_VOTES, Math.round(n)));
        set({
          votes: votes.map((old, index) => (index === choice ? count : old)),
          announcement: say('presenter.voted', { choice: shown.demonstration.choices[choice].text, n: count }),
        });
      },
      play(on) {
        const { shown, now_h } = get();
        if (shown === null) return;
        const playing = on && now_h < shown.days * 24;
        set({ playing, toward: null });
        clock(now_h, playing ? 'day1' : 'paused');
      },
      nudge(days) {
        const { shown, now_h } = get();
        if (shown === null) return;
        const midnight = days > 0 ? Math.floor(now_h / 24 + 1e-9) : Math.ceil(now_h / 24 - 1e-9);
        const hour = Math.max(0, Math.min(shown.days * 24, (midnight + days) * 24));
        set({ now_h: hour, toward: null, playing: false });
        clock(hour, 'paused');
      },
      turnTint(by) {
        const { shown } = get();
        if (shown === null) return;
        const { demonstration, seasons, plans } = shown;
        const tint = TINT_ORDER[(TINT_ORDER.indexOf(demonstration.tint) + by + TINT_ORDER.length) % TINT_ORDER.length];
        const scale = sharedScale(tint, seasons);
        for (const side of sides)
          side.setState(({ game, view }) => ({ view: { ...view, tint }, game: game.mode === 'class' ? { ...game, scale } : game }));
        const { measure, look } = demonstration;
        set({
          shown: {
            ...shown,
            demonstration: { ...demonstration, tint },
            scale,
            figures: figuresOf({ measure, tint, look, plan: plans[0], seasons }),
          },
          announcement: say('said.tint', { tint: say(`tint.${tint}`) }),
        });
      },
      choose() {
        wanted += 1;
        set({ shown: null, busy: false, toward: null, playing: false, announcement: say('presenter.choose') });
      },
      tick(seconds) {
        const { shown, toward, playing, now_h } = get();
        if (shown === null || (toward === null && !playing) || !(seconds > 0)) return;
        const goal = toward?.hour ?? shown.days * 24;
        const next = Math.min(goal, now_h + (toward?.perSecond ?? HOURS_PER_SECOND.day1) * Math.min(seconds, LONGEST_FRAME_S));
        const there = next >= goal;
        set({ now_h: next, ...(there ? { toward: null, playing: false } : {}) });
        clock(next, there ? 'paused' : toward === null ? 'day1' : 'days5');
      },
    };
  });
  return { store, sides };
}

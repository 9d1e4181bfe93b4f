// The picture of one loop at one size: everything baked and placed from back to front, and the parts that move.
import type { GameObjects } from 'phaser';
import type { PageState } from '../../state/common/page';
import { buildOf } from '../../state/common/selectors';
import { drewAir } from '../../state/run/pump';
import { addsUp } from '../../state/run/readings';
import { ground, houseOf } from './backdrop';
import { Dials } from '../kit/dials';
import { airPump, hose } from '../kit/parts';
import type { Pen } from '../kit/pen';
import { INK, rgb } from '../kit/palette';
import { HandleMarks } from '../marks/handleMarks';
import { hasUnplaced } from './gaps';
import type { Pulled } from './handles';
import { Heavens, showSky } from '../weather/heavens';
import { showAround, spaceOf, wallSpace, type Kit } from '../kit/kit';
import type { StageBox } from '../kit/boxes';
import { drawingOf, grows, isHome, pumpDrawingOf, sideDrawingOf } from './drawingOf';
import type { Live, Moment } from '../kit/moment';
import { showNames } from '../marks/nameMarks';
import { GapMarks, showLevels } from '../marks/planMarks';
import { Pipe, Pour } from '../water/pipes';
import { dropX, soilRow, soilY, steppedTags, tagX, tagY } from './positions';
import { Outlines } from './outlines';
import type { PictureInput } from './pictureInput';
import { RootLoupe } from '../life/rootLoupe';
import { Crop } from '../life/crop';
import { School } from '../life/school';
import type { Sheets } from '../life/sheets';
import { Spill } from '../water/spill';
import type { Rect, Studio } from '../kit/studio';
import { Tag, TagSheet } from '../marks/tags';

/** Height of a number in its art, world units; from close by it grows no larger than this on the page, px. */
const NUMBER_SIZE = 28;
const LARGEST_NUMBER_px = 34;
/** A large close look ends this far over the picture's lower edge, over the pipe in the ground, world units. */
const ABOVE_TRENCH = 78;
/** Room for a number of four figures, in half digits. */
const USUAL_HALVES = 7;

export class Picture {
  readonly kit: Kit;
  private readonly lives: Live[] = [];
  private readonly tags: Tag[] = [];
  private readonly tagIds: string[] = [];
  private gaps: GapMarks | null = null;
  private readonly tints: { id: string; tint: RootLoupe }[] = [];
  private readonly outlines: Outlines;
  private heavens: Heavens | null = null;
  private handles: HandleMarks | null = null;
  private covered: string | null = null;
  /** lies over the stage that is lifted out, where it still stands */
  private veil: GameObjects.Image | null = null;

  constructor(
    private readonly studio: Studio,
    sheets: Sheets,
    private readonly input: PictureInput,
  ) {
    const kit: Kit = {
      studio,
      sheets,
      dials: new Dials(addsUp),
      aerated: input.aerated,
      unitsPerM: input.layout.unitsPerM,
      school: (tank, water) => new School(kit, sheets, tank.id, tank.x, tank.w, tank.floor, water),
      crop: (bed, places, fit, layers) => new Crop(kit, sheets, bed, places, fit, layers),
      drewAir: (tank, { view, now_h }) => view !== null && drewAir(view, tank, now_h),
    };
    this.kit = kit;
    this.outlines = new Outlines(studio, (id) => this.outlineRect(id));
  }

  /**
   * Draws the picture from back to front, piece by piece, so that the page can do other things between; it is not shown before all is
   * there.
   */
  *draw(): Generator<void> {
    const { studio, kit, lives } = this;
    const { layout, viewTop, legible, bad } = this.input;
    const { building } = this.input;
    const shape = houseOf(layout.width, layout.top, viewTop);
    showSky(studio, shape, layout.width, viewTop);
    yield;
    this.heavens = new Heavens(studio, kit.sheets, shape, layout.width, viewTop, this.input.plan.climate.dayLength_h);
    yield;
    this.showGround();
    yield;
    if (building) this.gaps = new GapMarks(studio, layout.gaps);
    for (const run of layout.pipes) {
      lives.push(new Pipe(kit, run));
      yield;
    }
    this.showAirLine();
    for (const box of layout.stages) {
      yield;
      this.showStage(box);
    }
    yield;
    this.showSides();
    if (!building) for (const box of layout.stages) lives.push(new Spill(kit, box, layout.width));
    for (const box of layout.stages)
      if (grows(box.kind))
        this.tints.push({ id: box.id, tint: new RootLoupe(kit, box, legible.inSoil ? layout.bottom - ABOVE_TRENCH : null) });
    yield;
    showNames(studio, this.input, building ? 0 : (NUMBER_SIZE * this.numberScale() * USUAL_HALVES) / 4);
    yield;
    if (building) showLevels(studio, layout, bad);
    else this.showTags();
    this.veil = studio.patch(0, 0).setTint(rgb(INK.paper)).setAlpha(0.66).setVisible(false);
    if (this.input.handles.length > 0) this.handles = new HandleMarks(studio, this.input.handles, layout.width);
  }

  /** Shows what has been drawn. */
  show(): void {
    this.studio.layer.setVisible(true);
  }

  private showGround(): void {
    const { layout } = this.input;
    const space = { x: 0, y: -4, w: layout.width, h: layout.bottom + 4 };
    this.studio.show(
      this.studio.bakeWide(space, (pen) => {
        ground(pen, layout.width, layout.bottom);
        for (const run of layout.pipes) {
          for (let i = 0; i + 3 < run.points.length; i += 2) {
            const [x1, y1, x2, y2] = run.points.slice(i, i + 4);
            if (y1 === y2 && y1 > 40 && Math.abs(x2 - x1) > 200)
              pen.rect(Math.min(x1, x2) - 14, y1 - 16, Math.abs(x2 - x1) + 28, 32, { fill: INK.soilDeep, alpha: 0.28 }, 8);
          }
        }
        for (const box of layout.stages) if (box.stand === 'pit') drawingOf(box.kind).support(pen, box);
      }),
    );
  }

  private showAirLine(): void {
    const { layout, aerated } = this.input;
    const stages = layout.stages.filter((box) => aerated.has(box.id));
    if (stages.length === 0) return;
    const y = layout.airLine;
    const x = layout.width - 92;
    const from = Math.min(...stages.map(dropX));
    this.studio.show(this.studio.bakeWide({ x: from - 6, y: y - 4, w: x - from, h: 8 }, (pen) => hose(pen, `M${from} ${y}H${x}`)));
    this.studio.show(
      this.studio.bake({ x: x - 48, y: y - 24, w: 96, h: 56 }, (pen) => {
        pen.rect(x - 44, y + 21, 88, 7, { fill: INK.wood, ink: INK.ink, width: 2 });
        pen.at(x, y, () => airPump(pen), 0, 0.86);
      }),
    );
  }

  private showStage(box: StageBox): void {
    const { layout, aerated } = this.input;
    const drawing = drawingOf(box.kind);
    const space = spaceOf(box);
    const foot = box.stand === 'legs' ? (box.level + box.floor) / 2 : box.floor;
    if (box.stand !== 'pit')
      this.studio.show(this.studio.bake({ x: space.x, y: foot, w: space.w, h: 3 - foot }, (pen) => drawing.support(pen, box)));
    if (drawing.back) this.studio.show(this.studio.bake(wallSpace(box), (pen) => drawing.back?.(pen, box)));
    this.lives.push(...drawing.live(this.kit, box));
    if (layout.pump !== null && layout.pump.host === box.id)
      this.lives.push(...pumpDrawingOf(layout.pump.kind).live(this.kit, layout.pump, box, layout.width));
    for (const run of layout.pipes)
      if (run.to === box.id && run.pour !== null) this.lives.push(new Pour(this.kit, run, run.pour.x, run.pour.top, run.pour.bottom));
    const front = (pen: Pen): void => drawing.front(pen, box);
    if (drawing.hollow) showAround(this.studio, wallSpace(box), drawing.hollow(box), front);
    else this.studio.show(this.studio.bake(space, front));
    if (!aerated.has(box.id)) return;
    const x = dropX(box);
    this.studio.show(
      this.studio.bake({ x: x - 8, y: layout.airLine - 4, w: 16, h: box.floor - layout.airLine }, (pen) =>
        hose(pen, `M${x} ${layout.airLine}V${box.floor - 8}`),
      ),
    );
  }

  private showSides(): void {
    for (const side of this.input.layout.sides) {
      const host = this.input.layout.stages.find((box) => box.id === side.host);
      if (host !== undefined) this.lives.push(...sideDrawingOf(side.kind).live(this.kit, side, host));
    }
  }

  private showTags(): void {
    const scale = this.numberScale();
    const sheet = new TagSheet(this.studio, scale);
    const add = (id: string, kind: string, x: number, y: number): void => {
      const tag = new Tag(sheet, this.kit.dials, id, kind, x, y);
      this.tags.push(tag);
      this.tagIds.push(id);
      this.lives.push(tag);
    };
    const { stages } = this.input.layout;
    const soil = this.input.legible.inSoil ? this.soilRow(sheet) : null;
    const spots = [
      ...stages.map(({ id, kind }, i) => ({
        id,
        kind,
        x: soil?.get(id) ?? tagX(stages[i]),
        y: soil?.has(id) ? soilY(scale) : tagY(stages[i], scale),
        half: this.tagHalf(sheet, kind),
      })),
      ...this.input.layout.sides
        .filter((side) => sideDrawingOf(side.kind).place === 'pit')
        .map(({ id, kind, x, w, level, floor }) => ({ id, kind, x: x + w / 2, y: (level + floor) / 2, half: this.tagHalf(sheet, kind) })),
    ].filter(({ id }) => this.tells(id));
    const ys = steppedTags(spots, sheet.height * scale, this.input.layout.bottom);
    spots.forEach(({ id, kind, x }, i) => add(id, kind, x, ys[i]));
  }

  private numberScale(): number {
    const { cssScale } = this.studio;
    return Math.max(Math.min(1, LARGEST_NUMBER_px / (NUMBER_SIZE * cssScale)), this.input.legible.number_px / (NUMBER_SIZE * cssScale));
  }

  private tagHalf(sheet: TagSheet, kind: string): number {
    return (sheet.width(USUAL_HALVES, isHome(kind)) * sheet.scale) / 2;
  }

  /** Where the numbers stand in the ground, beside the close look at roots and the pits. */
  private soilRow(sheet: TagSheet): Map<string, number> {
    const { stages } = this.input.layout;
    const named = stages.filter((box) => box.stand !== 'pit' && this.tells(box.id));
    const roots = this.tints.filter(({ id }) => this.input.looked === id).map(({ tint }) => tint.span);
    return soilRow(stages, named, roots, (kind) => this.tagHalf(sheet, kind));
  }

  private tells(id: string): boolean {
    return this.input.told === null || this.input.told.includes(id);
  }

  /** @param pulled the handle that is being pulled */
  update(moment: Moment, state: PageState, pulled: Pulled | null): void {
    this.kit.dials.take(moment);
    for (let i = 0; i < this.lives.length; i += 1) this.lives[i].update(moment);
    const { selected, closer } = state.view;
    const build = buildOf(state);
    const drag = build === null ? null : build.drag;
    for (let i = 0; i < this.tints.length; i += 1) {
      this.tints[i].tint.open = !closer && selected === this.tints[i].id;
      this.tints[i].tint.update(moment);
    }
    for (let i = 0; i < this.tags.length; i += 1) this.tags[i].choose(selected === this.tagIds[i]);
    this.outlines.select(drag === null && !closer ? selected : null);
    this.cover(drag !== null && drag.from === 'loop' ? drag.stage.id : null);
    this.gaps?.update(build !== null && hasUnplaced(build.lesson.shelf, build.plan.loop), drag);
    this.heavens?.update(moment);
    this.handles?.update(drag === null ? selected : null, pulled);
    this.outlines.lift(pulled !== null && pulled.handle.pull === 'stand' ? pulled.dy : 0);
  }

  private cover(lifted: string | null): void {
    if (lifted === this.covered) return;
    this.covered = lifted;
    const box = this.boxOf(lifted);
    this.veil?.setVisible(box !== undefined);
    if (box === undefined) return;
    const top = box.rim - (grows(box.kind) ? 70 : 12);
    this.veil?.setPosition(box.x - 22, top).setDisplaySize(box.w + 44, Math.max(0, box.floor + 20) - top);
  }

  private boxOf(id: string | null): StageBox | undefined {
    return this.input.layout.stages.find((one) => one.id === id);
  }

  private outlineRect(id: string): Rect | null {
    const box = this.boxOf(id) ?? this.input.layout.sides.find((one) => one.id === id);
    return box === undefined ? this.pumpRect(id) : { x: box.x - 19, y: box.rim - 15, w: box.w + 38, h: box.floor - box.rim + 34 };
  }

  private pumpRect(id: string): Rect | null {
    const { pump } = this.input.layout;
    if (pump === null || pump.id !== id) return null;
    const { outline } = pumpDrawingOf(pump.kind);
    return { ...outline, x: pump.x + outline.x, y: pump.y + outline.y };
  }

  destroy(): void {
    this.studio.clear();
  }
}

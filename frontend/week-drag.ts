import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Block, BlockItem, Span, TaskCode } from './view-records';

export const STEP_MINUTES = 5;
/** A press that moves less than this is a press. */
const SLACK_PX = 6;

/** A visit in somebody's hand, and where it would be put down. */
export interface Carried {
  opening: string;
  task: TaskCode;
  minutes: number;
  crew: string;
  date: string;
  minute: number;
}

interface Lane {
  crew: string;
  date: string;
  box: { left: number; width: number };
}

type Host = ReactiveControllerHost & HTMLElement;

/** The visit of a block at a minute; between two visits, the nearer one. */
export function visitAt(block: Block, minute: number): BlockItem | undefined {
  const away = (item: BlockItem): number => Math.max(item.start - minute, minute - item.end, 0);
  return block.items.reduce<BlockItem | undefined>(
    (best, item) => (best && away(best) <= away(item) ? best : item),
    undefined,
  );
}

/** The minute under a pointer, of a lane that shows a stretch of the day. */
export function minuteAt(x: number, box: Lane['box'], shown: Span): number {
  return shown.from + ((x - box.left) / box.width) * (shown.until - shown.from);
}

/** Whole steps, and never before the first or past the last minute of what is shown. */
export function snapped(minute: number, shown: Span): number {
  const whole = Math.round(minute / STEP_MINUTES) * STEP_MINUTES;
  return Math.min(Math.max(whole, shown.from), shown.until - STEP_MINUTES);
}

/**
 * Carries a visit over the sheet with mouse or pen; where it is put down, the element tells of it and moves nothing. A finger
 * scrolls instead: on a phone, and by keyboard, the visit's own form does the same.
 */
export class WeekDrag implements ReactiveController {
  carried: Carried | undefined;
  private held: { block: Block; x: number; y: number; pointer: number; grip: number } | undefined;
  private readonly onMove = (event: PointerEvent): void => this.move(event);
  private readonly onUp = (event: PointerEvent): void => this.drop(event);
  private readonly onKey = (event: KeyboardEvent): void => {
    if (event.key === 'Escape') this.letGo();
  };

  constructor(
    private readonly host: Host,
    private readonly shown: () => Span,
  ) {
    host.addController(this);
  }

  hostDisconnected(): void {
    this.letGo();
  }

  hold(event: PointerEvent, block: Block, lane: Element | null): void {
    if (event.button !== 0 || event.pointerType === 'touch' || !(lane instanceof HTMLElement)) return;
    const minute = minuteAt(event.clientX, lane.getBoundingClientRect(), this.shown());
    const visit = visitAt(block, minute);
    if (!visit) return;
    this.held = {
      block: { ...block, items: [visit] },
      x: event.clientX,
      y: event.clientY,
      pointer: event.pointerId,
      grip: Math.min(Math.max(minute - visit.start, 0), visit.end - visit.start),
    };
    window.addEventListener('pointermove', this.onMove);
    window.addEventListener('pointerup', this.onUp);
    window.addEventListener('pointercancel', this.onUp);
    window.addEventListener('keydown', this.onKey, true);
  }

  private move(event: PointerEvent): void {
    const held = this.held;
    if (!held || event.pointerId !== held.pointer) return;
    const far = Math.hypot(event.clientX - held.x, event.clientY - held.y) >= SLACK_PX;
    if (!this.carried && !far) return;
    event.preventDefault();
    const visit = held.block.items[0];
    const lane = this.laneUnder(event);
    if (!visit || !lane) return;
    this.carried = {
      opening: visit.opening,
      task: held.block.task,
      minutes: visit.end - visit.start,
      crew: lane.crew,
      date: lane.date,
      minute: snapped(minuteAt(event.clientX, lane.box, this.shown()) - held.grip, this.shown()),
    };
    this.host.requestUpdate();
  }

  private laneUnder(event: PointerEvent): Lane | undefined {
    const lane = (this.host.shadowRoot?.elementsFromPoint(event.clientX, event.clientY) ?? []).find(
      (one): one is HTMLElement => one instanceof HTMLElement && one.classList.contains('lane'),
    );
    if (!lane?.dataset['crew'] || !lane.dataset['date']) return undefined;
    return { crew: lane.dataset['crew'], date: lane.dataset['date'], box: lane.getBoundingClientRect() };
  }

  private drop(event: PointerEvent): void {
    if (event.pointerId !== this.held?.pointer) return;
    const carried = event.type === 'pointerup' ? this.carried : undefined;
    this.letGo();
    if (!carried) return;
    this.host.dispatchEvent(new CustomEvent('visit-dropped', { detail: carried, bubbles: true, composed: true }));
  }

  private letGo(): void {
    this.held = undefined;
    this.carried = undefined;
    window.removeEventListener('pointermove', this.onMove);
    window.removeEventListener('pointerup', this.onUp);
    window.removeEventListener('pointercancel', this.onUp);
    window.removeEventListener('keydown', this.onKey, true);
    this.host.requestUpdate();
  }
}

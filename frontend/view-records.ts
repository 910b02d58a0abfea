/* What the presenters hand over; times of a sheet are minutes of the crew's day, times of a strip are minutes from its start. */

export type TaskCode = 'install' | 'test' | 'wrap' | 'clad';

export interface Span {
  from: number;
  until: number;
}

export interface SkySpan extends Span {
  kind: 'rain' | 'dark' | 'beyond';
}

export interface SiteSky {
  code: string;
  site: string;
  sky: SkySpan[];
}

export interface SheetDay {
  date: string;
  weekday: string;
  label: string;
  sites: SiteSky[];
}

export interface BlockItem {
  opening: string;
  from: string;
  until: string;
  start: number;
  end: number;
  words: string;
  beyond: boolean;
}

export interface Block extends Span {
  task: TaskCode;
  siteCode: string;
  site: string;
  facade: string;
  level: number;
  fromText: string;
  untilText: string;
  beyond: boolean;
  pinned: boolean;
  items: BlockItem[];
  ticks: number[];
}

export interface CrewDay {
  date: string;
  shift: Span | null;
  rest: Span | null;
  sky: SkySpan[];
  blocks: Block[];
  hidden: number;
  /** What is said of a day without visits. */
  idle: string;
}

export interface CrewRow {
  crew: string;
  task: TaskCode;
  trade: string;
  days: CrewDay[];
}

export interface Week {
  fromHour: number;
  untilHour: number;
  days: SheetDay[];
  crews: CrewRow[];
}

export interface RainHour {
  from: number;
  mm: number;
  probability: number;
  raining: boolean;
}

export interface TaskHours {
  task: TaskCode;
  spans: Span[];
  words: string[];
}

export interface Strip {
  title: string;
  heading: string;
  length: number;
  days: { from: number; label: string }[];
  rain: RainHour[];
  dark: Span[];
  forecastEnd: number;
  tasks: TaskHours[];
}

/** on = in place; missing = owed to an opening that has been begun; later = not begun, or another trade's turn; none = no such layer here. */
export type PartState = 'on' | 'missing' | 'later' | 'none';

/** In whose hands an opening is. */
export type HandState = 'not-released' | 'released-before' | 'released' | 'accepted' | 'returned';

export interface Glyph {
  opening: string;
  widthMm: number;
  heightMm: number;
  progress: string;
  words: string;
  rating: string;
  water: boolean;
  apron: PartState;
  pan: PartState;
  window: PartState;
  jambs: PartState;
  head: PartState;
  flap: PartState;
  wrap: PartState;
  second: PartState;
  clad: PartState;
  edgeHeld: boolean;
  hand: HandState | null;
}

export interface WallCourse {
  level: number;
  openings: Glyph[];
}

export interface Wall {
  title: string;
  heading: string;
  courses: WallCourse[];
}

export interface Run {
  id: string;
  status: 'waiting' | 'running' | 'done' | 'stopped' | 'failed';
  words: string;
  seconds: number;
  /** 0 where its time has no limit */
  ofSeconds: number;
  moves: number;
  cost: number;
  planned: number;
  unplanned: number;
  points: RunPoint[];
}

/** What the best plan of a run cost from a moment on. */
export interface RunPoint {
  seconds: number;
  cost: number;
  unplanned: number;
}

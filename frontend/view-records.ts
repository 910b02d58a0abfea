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

/** The forecast's hours, one value each from the first on. */
export interface SkyHours {
  /** The start of the first, in minutes of the strip. */
  from: number;
  rain: number[];
  /** Percent. */
  chance: number[];
  raining: boolean[];
  /** Rain that wind drives on to this wall, litres per square metre of an open airfield. */
  wall: number[];
  wetting: boolean[];
  gust: number[];
  temperature: number[];
}

/** From where on an hour counts, by the contractor's rules. */
export interface StripLimits {
  chance: number;
  gust: number;
  cold: number;
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
  sky: SkyHours;
  limits: StripLimits;
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

/** Where the weather of a day comes from when a plan is replayed. */
export type SkySource = 'forecast' | 'partly' | 'climate';

export interface HandoverDay {
  label: string;
  /** Handed over by the end of the day, 0 to 1. */
  chance: number;
  sky: SkySource;
}

/** Not handed over later than this in so many cases of ten; the place is in days from the start of the first. */
export interface HandoverMark {
  ofTen: number;
  at: number;
  words: string;
}

export interface HandoverOdds {
  title: string;
  days: HandoverDay[];
  marks: HandoverMark[];
  /** The end of the due day, in days from the start of the first; negative where there is none. */
  due: number;
  dueWords: string;
}

export interface CrewDayCell {
  /** Not got through, 0 to 1. */
  chance: number;
  error: number;
  words: string;
}

export interface CrewDayOdds {
  days: { label: string; sky: SkySource }[];
  /** Days on which a crew is not planned are null. */
  crews: { crew: string; cells: (CrewDayCell | null)[] }[];
}

export interface WetOpening {
  opening: string;
  place: string;
  /** Gets wet while open, and is rained on, 0 to 1. */
  wet: number;
  error: number;
  rainedOn: number;
  words: string;
}

export interface WetOdds {
  openings: WetOpening[];
  /** How many more the table has. */
  more: number;
}

/** A month of one facade, in crew-hours of the site's window crews. */
export interface SeasonMonth {
  label: string;
  /** under the label where a year begins; else blank */
  year: string;
  name: string;
  light: number;
  usable: number;
  /** not passed in 1 and in 9 of 10 years */
  low: number;
  high: number;
  /** install work that is left as the month begins */
  left: number;
}

export interface Season {
  title: string;
  months: SeasonMonth[];
  /** the due date in months from the first one's start; below 0 where there is none to show */
  due: number;
  dueWords: string;
}

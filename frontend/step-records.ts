/* What a phone keeps of openings and of what its owner marked there, and what the server answers. */

export interface StepLine {
  code: string;
  text: string;
  trade: string;
  installBlock: boolean;
  yours: boolean;
  release: boolean;
  /** The codes of all lines that must be done before it. */
  waitsFor: string[];
  done: boolean;
  next: boolean;
  why?: string;
  at?: string;
  by?: string;
  photoIds?: string[];
}

export interface OpeningNow {
  folder: number;
  opening: string;
  site: string;
  facade: string;
  level: number;
  variant: string;
  version: number;
  rating: { code: string; words: string; mayBeLeft: boolean };
  weaknesses: string[];
  missingLaps: string[];
  apron: string;
  drainsTo: string;
  releasable: boolean;
  released: boolean;
  lines: StepLine[];
  sun: { layer: string; words: string; daysLeft?: number }[];
  svg: string;
}

/** What the newest measurement of the rough opening comes to; only the right where there is none. */
export interface RoughNow {
  mayMeasure: boolean;
  grade?: 'fits' | 'shim' | 'report';
  words?: string;
  meaning?: string;
  by?: string;
  at?: string;
}

export interface Me {
  id: number;
  name: string;
  role: string;
  header: string;
  token: string;
  /** In which language they read; a phone that has not asked since knows none. */
  language?: string;
}

interface Waiting {
  /** Where it stands in the row; given by the store. */
  seq?: number;
  /** Made here; sent twice, it is still one. */
  key: string;
  person: number;
  personName: string;
  folder: number;
  opening: string;
  /** Why the server does not take it; such an entry is not sent again, or only later, and stays until a person has read it. */
  refusal?: Refusal;
}

export interface WaitingMark extends Waiting {
  sort: 'mark';
  line: string;
  text: string;
  kind: 'done' | 'undone';
  markedAt: string;
  reason?: string;
  photoIds: string[];
}

export interface WaitingPhoto extends Waiting {
  sort: 'photo';
  takenAt: string;
  file: Blob;
}

export type Entry = WaitingMark | WaitingPhoto;

export interface Refusal {
  words: string;
  svg?: string;
  /** From when on it is sent again by itself, in milliseconds since 1970; without it, never. */
  again?: number;
}

export interface MarkAnswer {
  key: string;
  outcome: 'marked' | 'already' | 'refused';
  /** Of the opening, once it is marked. */
  version?: number;
  words?: string;
  svg?: string;
}

/** An opening to release, with the version that the person looked at. */
export interface Release {
  opening: string;
  version: number;
}

/** Whether an opening may be released, and what of its course could go with it. */
export interface ReleaseState {
  version: number;
  against: string[];
  course: (Release & { against: string[] })[];
}

export interface ReleaseAnswer {
  outcome: 'released' | 'already' | 'not-yet' | 'changed';
  words: string;
}

/** Where waiting entries outlive the page: in the browser's database, or in memory for tests. */
export interface StepStore {
  /** In the order in which they were added. */
  entries(): Promise<Entry[]>;
  add(entry: Entry): Promise<void>;
  replace(entry: Entry): Promise<void>;
  remove(seq: number): Promise<void>;
  recall<T>(name: string): Promise<T | undefined>;
  remember(name: string, what: unknown): Promise<void>;
  /** Nothing else is written between what is read and what `how` makes of it; `undefined` leaves it as it is. */
  revise<T>(name: string, how: (known: T | undefined) => T | undefined): Promise<void>;
  forget(prefix: string): Promise<void>;
}

import { TASKS } from './shared';
import { english, type Say } from './speech';
import type { Strip } from './view-records';

const HOUR = 60;

/** What is forecast for the hour at a minute of the strip. */
export interface HourTold {
  rain: number;
  chance: number;
  raining: boolean;
  wall: number;
  wetting: boolean;
  gust: number;
  temperature: number;
}

export function hourAt(strip: Strip, at: number): HourTold | undefined {
  const { sky } = strip;
  const i = Math.floor((at - sky.from) / HOUR);
  if (at < sky.from || at >= strip.forecastEnd || i >= sky.rain.length) return undefined;
  return {
    rain: sky.rain[i] ?? 0,
    chance: sky.chance[i] ?? 0,
    raining: sky.raining[i] ?? false,
    wall: sky.wall[i] ?? 0,
    wetting: sky.wetting[i] ?? false,
    gust: sky.gust[i] ?? 0,
    temperature: sky.temperature[i] ?? 0,
  };
}

export function clockAt(strip: Strip, at: number): string {
  const day = strip.days.findLast((d) => d.from <= at);
  const minutes = at - (day?.from ?? 0);
  return `${day?.label ?? ''} ${pad(Math.floor(minutes / HOUR))}:${pad(minutes % HOUR)}`.trim();
}

/** "Tue 14 Apr 09:00: rain 1.2 mm at 60 %; gust 6 m/s; 9 °C; open for clad; shut for install, water test, wrap". */
export function readingAt(strip: Strip, at: number, say: Say = english): string {
  const open = openAt(strip, at);
  const shut = strip.tasks.filter((t) => !open.includes(t));
  return [
    `${clockAt(strip, at)}: ${skyAt(strip, at, say)}`,
    open.length ? say('open for {0}', names(open, say)) : '',
    shut.length ? say('shut for {0}', names(shut, say)) : '',
  ]
    .filter(Boolean)
    .join('; ');
}

export function openAt(strip: Strip, at: number): Strip['tasks'] {
  return strip.tasks.filter((t) => t.spans.some((s) => s.from <= at && at < s.until));
}

export function names(tasks: Strip['tasks'], say: Say): string {
  return tasks.map((t) => say(TASKS[t.task].name).toLowerCase()).join(', ');
}

export function darkAt(strip: Strip, at: number): boolean {
  return strip.dark.some((d) => d.from <= at && at < d.until);
}

function skyAt(strip: Strip, at: number, say: Say): string {
  const dark = darkAt(strip, at) ? [say('dark')] : [];
  const told = hourAt(strip, at);
  if (!told) return [untold(strip, at, say), ...dark].join(', ');
  const gust = told.gust.toFixed(0);
  const warmth = told.temperature.toFixed(0);
  return [
    [rainWords(told, say), ...dark].join(', '),
    ...onTheWall(told, say),
    told.gust > strip.limits.gust ? say('gust {0} m/s, too much for the install', gust) : say('gust {0} m/s', gust),
    told.temperature < strip.limits.cold ? say('{0} °C, too cold for the install', warmth) : `${warmth} °C`,
  ].join('; ');
}

/** Why nothing is told of an hour. */
export function untold(strip: Strip, at: number, say: Say): string {
  return at < strip.sky.from ? say('not told') : say('beyond the forecast: climate only');
}

function onTheWall(told: HourTold, say: Say): string[] {
  const wall = told.wall.toFixed(2);
  if (told.wall <= 0) return [];
  return [told.wetting ? say('on the wall {0} l/m², which wets it', wall) : say('on the wall {0} l/m²', wall)];
}

export function rainWords(told: HourTold, say: Say): string {
  if (told.rain <= 0) return say('no rain');
  const [rain, chance] = [told.rain.toFixed(1), told.chance.toFixed(0)];
  return told.raining
    ? say('rain {0} mm at {1} %', rain, chance)
    : say('too little to count as rain, {0} mm at {1} %', rain, chance);
}

function pad(n: number): string {
  return String(n).padStart(2, '0');
}

import { TASKS } from './shared';
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
export function readingAt(strip: Strip, at: number): string {
  const open = openAt(strip, at);
  const shut = strip.tasks.filter((t) => !open.includes(t));
  return [
    `${clockAt(strip, at)}: ${skyAt(strip, at)}`,
    open.length ? `open for ${names(open)}` : '',
    shut.length ? `shut for ${names(shut)}` : '',
  ]
    .filter(Boolean)
    .join('; ');
}

export function openAt(strip: Strip, at: number): Strip['tasks'] {
  return strip.tasks.filter((t) => t.spans.some((s) => s.from <= at && at < s.until));
}

export function names(tasks: Strip['tasks']): string {
  return tasks.map((t) => TASKS[t.task].name.toLowerCase()).join(', ');
}

export function darkAt(strip: Strip, at: number): boolean {
  return strip.dark.some((d) => d.from <= at && at < d.until);
}

function skyAt(strip: Strip, at: number): string {
  const dark = darkAt(strip, at) ? ['dark'] : [];
  const told = hourAt(strip, at);
  if (!told) return [at < strip.sky.from ? 'not told' : 'beyond the forecast: climate only', ...dark].join(', ');
  const wall =
    told.wall > 0 ? [`on the wall ${told.wall.toFixed(2)} l/m²${told.wetting ? ', which wets it' : ''}`] : [];
  const stops = told.gust > strip.limits.gust ? ', too much for the install' : '';
  const cold = told.temperature < strip.limits.cold ? ', too cold for the install' : '';
  return [
    [rainWords(told), ...dark].join(', '),
    ...wall,
    `gust ${told.gust.toFixed(0)} m/s${stops}`,
    `${told.temperature.toFixed(0)} °C${cold}`,
  ].join('; ');
}

export function rainWords(told: HourTold): string {
  if (told.rain <= 0) return 'no rain';
  const kind = told.raining ? 'rain' : 'too little to count as rain,';
  return `${kind} ${told.rain.toFixed(1)} mm at ${told.chance.toFixed(0)} %`;
}

function pad(n: number): string {
  return String(n).padStart(2, '0');
}

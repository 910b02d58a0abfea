import spanish from '../src/main/resources/speech/page.es.json';

/** Says an English sentence the way that someone reads; `{0}`, `{1}` are places for the parts. */
export type Say = (english: string, ...parts: (string | number)[]) => string;

const WORDS: Record<string, Record<string, string> | undefined> = { es: spanish };
/** Day before month in words, hours of a 24 hour clock, as everywhere in the house. */
const LOCALES: Record<string, string | undefined> = { es: 'es-US' };
const USUAL_LOCALE = 'en-GB';

/** As it stands in the code. */
export const english: Say = (sentence, ...parts) => filled(sentence, parts);

/** Marks a sentence that is said later. */
export function words(sentence: string): string {
  return sentence;
}

export function sayIn(language: string): Say {
  const known = WORDS[language];
  return (sentence, ...parts) => filled(known?.[sentence] ?? sentence, parts);
}

/** In the language of the part of the page in which the element stands. */
export function speechOf(element: Element): Say {
  return sayIn(languageOf(element));
}

/** Such as "Tue 14 Apr 09:30". */
export function moment(element: Element, at: string): string {
  const locale = LOCALES[languageOf(element)] ?? USUAL_LOCALE;
  const said = (how: Intl.DateTimeFormatOptions) => new Date(at).toLocaleString(locale, how);
  const day = [{ weekday: 'short' }, { day: 'numeric' }, { month: 'short' }] as const;
  return [...day.map(said), said({ hour: '2-digit', minute: '2-digit', hourCycle: 'h23' })].join(' ');
}

function languageOf(element: Element): string {
  const marked = element.closest('[lang]');
  if (marked) return marked.getAttribute('lang') ?? '';
  const root = element.getRootNode();
  return root instanceof ShadowRoot ? languageOf(root.host) : document.documentElement.lang;
}

function filled(sentence: string, parts: (string | number)[]): string {
  return sentence.replace(/\{(\d)\}/g, (place, at: string) => String(parts[Number(at)] ?? place));
}

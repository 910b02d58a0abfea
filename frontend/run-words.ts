/** With a thin space between the thousands. */
export function grouped(value: number): string {
  return value.toLocaleString('en-US').replaceAll(',', '\u2009');
}

/** A stretch of time such as "45 s" or "3 min 05 s". */
export function lasting(seconds: number): string {
  const whole = Math.floor(seconds);
  if (whole < 60) return `${whole} s`;
  return `${Math.floor(whole / 60)} min ${String(whole % 60).padStart(2, '0')} s`;
}

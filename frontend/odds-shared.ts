import { css } from 'lit';

/** A chance as it stands in a figure: whole percent, and never a certainty that trials cannot give. */
export function ofHundred(chance: number): string {
  const percent = chance * 100;
  if (percent > 0 && percent < 1) return '<1';
  if (percent < 100 && percent > 99) return '>99';
  return Math.round(percent).toString();
}

export const oddsStyles = css`
  :host {
    container-type: inline-size;
  }
  .climate {
    background: radial-gradient(circle at 3px 3px, var(--beyond) 0.8px, transparent 1.2px) 0 0 / 5px 5px;
  }
  .key {
    display: flex;
    flex-wrap: wrap;
    gap: 0.1rem 1rem;
    margin: 0.3rem 0 0;
    padding: 0;
    list-style: none;
    font: 400 0.78rem/1.4 var(--type-narrow);
    color: var(--ink-soft);
  }
  .key .climate,
  .key .half {
    display: inline-block;
    width: 1.5em;
    height: 0.9em;
    margin-inline-end: 0.35em;
    vertical-align: -0.1em;
    border: 1px solid var(--beyond);
  }
  text {
    font: 400 12px var(--type-narrow);
    fill: var(--ink-soft);
  }
`;

import { css } from 'lit';

export const stripStyles = css`
  .strip {
    display: grid;
    grid-template-columns: 7.6rem minmax(34rem, 1fr);
    overflow-x: auto;
    background: var(--sheet);
    border: 1px solid var(--line-strong);
    border-radius: 3px;
  }
  .names {
    position: sticky;
    inset-inline-start: 0;
    z-index: 2;
    background: var(--sheet);
    border-inline-end: 1px solid var(--line-strong);
    font: 400 0.82rem/1 var(--type-narrow);
  }
  .names div {
    display: flex;
    align-items: center;
    gap: 0.35rem;
    padding-inline: 0.5rem;
    height: 1.35rem;
  }
  .names .tall,
  .row.tall {
    height: 2.4rem;
  }
  .names small {
    color: var(--ink-soft);
    font-size: 0.72rem;
  }
  .names .tall div {
    display: grid;
    gap: 0.1rem;
    height: auto;
    padding: 0;
  }
  .names .top,
  .dates {
    height: 1.35rem;
  }
  .track {
    position: relative;
    touch-action: pan-y;
    cursor: crosshair;
  }
  .dates {
    position: relative;
    border-block-end: 1px solid var(--line);
  }
  .dates span {
    position: absolute;
    padding-inline-start: 5px;
    font: 500 0.8rem/1.35rem var(--type-narrow);
    white-space: nowrap;
  }
  .day {
    position: absolute;
    inset-block: 0;
    width: 1px;
    background: var(--line-strong);
  }
  .row {
    position: relative;
    height: 1.35rem;
    border-block-end: 1px solid var(--line);
  }
  .row svg {
    position: absolute;
    inset: 0;
    width: 100%;
    height: 100%;
  }
  .pale {
    fill: color-mix(in srgb, var(--series) 38%, transparent);
  }
  .full {
    fill: var(--series);
  }
  .line {
    fill: none;
    stroke: var(--series);
    stroke-width: 1.6px;
    vector-effect: non-scaling-stroke;
  }
  .limit {
    stroke: var(--ink-soft);
    stroke-width: 1px;
    stroke-dasharray: 4 3;
    vector-effect: non-scaling-stroke;
  }
  .row.rain,
  .row.chance,
  .row.wall {
    --series: var(--rain);
  }
  .row.gust,
  .row.cold {
    --series: var(--beyond);
  }
  .row.gust .full,
  .row.cold .full {
    fill: var(--alarm);
  }
  .open {
    position: absolute;
    inset-block: 4px;
    min-width: 2px;
    background: var(--wash);
    border: 1px solid var(--task);
    border-radius: 2px;
  }
  .open::before {
    content: '';
    position: absolute;
    inset: auto 0 0;
    height: 5px;
    background: var(--pattern);
  }
  .now {
    position: absolute;
    inset-block: 0;
    width: 2px;
    margin-inline-start: -1px;
    background: var(--focus);
    pointer-events: none;
  }
  .reading {
    min-height: 1.4rem;
    margin: 0.25rem 0 0;
    font-size: 0.85rem;
    color: var(--ink-soft);
  }
  .reading b {
    color: var(--ink);
    font-weight: 600;
  }
  details {
    margin-block: 0.2rem 0.6rem;
    font-size: 0.85rem;
  }
  summary {
    width: fit-content;
    padding-block: 0.2rem;
    color: var(--accent);
    cursor: pointer;
  }
  .table {
    max-height: 22rem;
    overflow: auto;
    background: var(--sheet);
    border: 1px solid var(--line);
  }
  table {
    width: 100%;
    border-collapse: collapse;
  }
  th,
  td {
    padding: 0.2rem 0.5rem;
    text-align: start;
    white-space: nowrap;
    border-block-end: 1px solid var(--line);
  }
  td:last-child {
    white-space: normal;
    min-width: 9rem;
  }
  thead th {
    position: sticky;
    top: 0;
    font-weight: 600;
    background: var(--sheet);
  }
  tbody th {
    font-weight: 500;
  }
  @media print {
    .strip {
      grid-template-columns: 7.6rem minmax(0, 1fr);
      overflow: visible;
      break-inside: avoid;
      print-color-adjust: exact;
    }
    .reading,
    details:not([open]) {
      display: none;
    }
    .table {
      max-height: none;
      overflow: visible;
    }
  }
  @media (max-width: 480px) {
    .strip {
      grid-template-columns: 5.9rem minmax(34rem, 1fr);
    }
    .names div {
      padding-inline: 0.3rem;
      gap: 0.2rem;
    }
  }
`;

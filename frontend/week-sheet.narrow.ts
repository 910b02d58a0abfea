import { css } from 'lit';

/** One day at a time with the crews stacked, for a sheet as narrow as a phone; and the sheet on paper. */
export const weekSheetNarrow = css`
  @container (max-width: 720px) {
    .days {
      display: grid;
      grid-auto-flow: column;
      grid-auto-columns: 1fr;
      gap: 2px;
      margin-bottom: 0.5rem;
    }
    .days button {
      min-height: 2.75rem;
      padding: 0;
      font-size: 0.82rem;
      line-height: 1.1;
    }
    .days button[aria-pressed='true'] {
      background: var(--accent);
      color: var(--on-accent);
    }
    .days small {
      display: block;
      font-size: 0.72rem;
    }
    table,
    thead,
    tbody,
    tr,
    tbody th,
    td.today,
    th.today {
      display: block;
      width: auto;
    }
    thead .corner,
    td:not(.today),
    thead th:not(.corner, .today) {
      display: none;
    }
    thead th.today,
    tbody td.today {
      border-inline-start: 0;
    }
    .off .title span {
      display: inline;
    }
    .place::after {
      content: attr(data-site);
      position: absolute;
      inset-inline-start: 4px;
      font: 500 0.72rem/1.05rem var(--type-narrow);
      padding-inline: 3px;
      background: color-mix(in srgb, var(--sheet) 82%, transparent);
    }
    .place {
      height: 1.05rem;
    }
    tbody th {
      padding: 0.4rem 0.5rem 0.25rem;
      border-inline-start: 0;
    }
    tbody th small {
      display: inline;
      margin-inline-start: 0.3rem;
    }
    tbody th .who {
      display: inline-flex;
    }
    tbody td {
      height: auto;
    }
    .lane {
      height: 3.6rem;
    }
  }
  @media print {
    visit-slip,
    .turn {
      display: none;
    }
  }
`;

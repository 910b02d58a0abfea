import { css } from 'lit';

export const weekSheetStyles = css`
  :host {
    container-type: inline-size;
  }
  .days {
    display: none;
  }
  .missed {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0.4rem 0.8rem;
    margin: 0 0 0.6rem;
    color: var(--alarm);
  }
  .bar {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0.4rem 1.1rem;
    padding-bottom: 0.5rem;
    font-size: 0.85rem;
    color: var(--ink-soft);
  }
  .key {
    display: inline-flex;
    align-items: center;
    gap: 0.35rem;
  }
  .swatch {
    position: relative;
    width: 1.5rem;
    height: 0.95rem;
    border: 1px solid var(--line-strong);
    border-radius: 2px;
    overflow: hidden;
  }
  .turn {
    margin-inline-start: auto;
    display: flex;
    gap: 0.3rem;
    align-items: center;
  }
  .missed button,
  .turn button,
  .days button {
    min-height: 2rem;
    min-width: 2rem;
    border: 1px solid var(--line-strong);
    border-radius: 3px;
    background: var(--raised);
  }
  .turn button:disabled {
    opacity: 0.4;
    cursor: default;
  }
  table {
    width: 100%;
    border-collapse: collapse;
    table-layout: fixed;
    background: var(--sheet);
    border: 1px solid var(--line-strong);
  }
  th {
    font-weight: 500;
    text-align: start;
    vertical-align: top;
    padding: 0;
  }
  td {
    padding: 0;
    height: 1px;
  }
  .corner {
    width: 9.25rem;
  }
  .off {
    width: 3.1rem;
  }
  thead th,
  tbody td,
  tbody th {
    border-inline-start: 1px solid var(--line);
    border-block-start: 1px solid var(--line);
  }
  thead th {
    border-block-end: 1px solid var(--line-strong);
  }
  thead .title {
    display: flex;
    justify-content: space-between;
    align-items: baseline;
    gap: 0.3rem;
    padding: 0.3rem 0.4rem 0.15rem;
    font-size: 0.95rem;
    white-space: nowrap;
    overflow: hidden;
  }
  thead .title span {
    color: var(--ink-soft);
    font-size: 0.8rem;
    font-weight: 400;
  }
  .off .title span {
    display: none;
  }
  .place {
    position: relative;
    height: 0.85rem;
    overflow: hidden;
    border-block-start: 1px solid var(--line);
  }
  .corner .place {
    padding-inline: 0.5rem;
    font: 400 0.72rem/0.85rem var(--type-narrow);
    color: var(--ink-soft);
    white-space: nowrap;
    text-overflow: ellipsis;
  }
  .hours {
    position: relative;
    height: 0.95rem;
    font: 400 0.68rem/0.95rem var(--type-narrow);
    color: var(--ink-soft);
    border-block-start: 1px solid var(--line);
  }
  .hours span {
    position: absolute;
    transform: translateX(-50%);
  }
  tbody th {
    padding: 0.45rem 0.5rem;
    font-size: 0.95rem;
    line-height: 1.2;
  }
  tbody th .who {
    display: flex;
    align-items: center;
    gap: 0.4rem;
    overflow-wrap: anywhere;
  }
  tbody th small {
    display: block;
    margin-top: 0.1rem;
    font-size: 0.78rem;
    font-weight: 400;
    color: var(--ink-soft);
  }
  .lane {
    position: relative;
    height: 100%;
    min-height: 3.5rem;
    overflow: hidden;
    background: var(--paper);
  }
  .shift {
    position: absolute;
    inset-block: 0;
    background: var(--sheet);
  }
  .rest {
    position: absolute;
    bottom: 0;
    height: 3px;
    background: var(--line-strong);
  }
  .free {
    position: absolute;
    inset: 0;
    display: grid;
    place-items: center;
    font-size: 0.76rem;
    color: var(--ink-soft);
  }
  visit-slip {
    position: sticky;
    bottom: 0;
    z-index: 3;
    margin-top: 0.6rem;
  }
`;

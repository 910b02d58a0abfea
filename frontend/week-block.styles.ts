import { css } from 'lit';

/** The visits on a week sheet, resting and carried. */
export const weekBlockStyles = css`
  .block {
    position: absolute;
    inset-block: 5px;
    container-type: inline-size;
    min-width: 9px;
    padding: 7px 0 0;
    overflow: hidden;
    text-align: start;
    background: var(--wash);
    border: 1px solid var(--task);
    border-radius: 3px;
  }
  .block::before {
    content: '';
    position: absolute;
    inset: 0 0 auto;
    height: 6px;
    background: var(--pattern);
  }
  .block.beyond {
    border-style: dashed;
    border-width: 1.5px;
  }
  .block[aria-pressed='true'] {
    box-shadow:
      0 0 0 2px var(--sheet),
      0 0 0 4px var(--focus);
    z-index: 2;
    overflow: visible;
  }
  .block.pinned {
    border-width: 2px;
  }
  .block .nail {
    position: absolute;
    inset-block-end: 2px;
    inset-inline-end: 2px;
  }
  .nail {
    width: 0.85rem;
    height: 0.85rem;
    fill: var(--task, currentColor);
    stroke: var(--task, currentColor);
    stroke-width: 1.6;
  }
  .carried {
    position: absolute;
    inset-block: 3px;
    z-index: 3;
    min-width: 2.4rem;
    padding-inline: 3px;
    overflow: hidden;
    font: 600 0.82rem/1.3 var(--type-narrow);
    color: var(--ink);
    background: var(--raised);
    border: 2px dashed var(--task);
    border-radius: 3px;
    pointer-events: none;
  }
  .hidden {
    position: absolute;
    inset-block-start: 0;
    inset-inline-end: 2px;
    padding-inline: 2px;
    font: 500 0.72rem/1 var(--type-narrow);
    color: var(--ink-soft);
    background: var(--sheet);
  }
  .tick {
    position: absolute;
    top: 6px;
    height: 4px;
    width: 1px;
    background: var(--task);
  }
  .text {
    display: block;
    padding-inline: 4px;
    font: 500 0.82rem/1.2 var(--type-narrow);
    white-space: nowrap;
    overflow: hidden;
  }
  .text b {
    font-weight: 600;
  }
  .text.second {
    font-weight: 400;
    font-size: 0.76rem;
  }
  @container (max-width: 33px) {
    .text {
      padding-inline: 2px;
    }
    .wide {
      display: none;
    }
  }
  @container (max-width: 15px) {
    .text {
      padding-inline: 0;
      text-align: center;
    }
    .text.second {
      display: none;
    }
  }
`;

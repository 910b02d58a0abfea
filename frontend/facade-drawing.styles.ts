import { css } from 'lit';

export const facadeStyles = css`
  .scroll {
    overflow-x: auto;
  }
  .wall-face {
    display: inline-block;
    min-width: 100%;
    background: var(--bare);
    border: 1.5px solid var(--ink);
    border-block-end: 0;
  }
  .course {
    display: flex;
    align-items: flex-end;
    gap: 0.25rem;
    padding: 0.6rem 0.5rem 0.35rem;
    border-block-end: 1px dashed var(--line-strong);
  }
  .course.wrapped {
    background: repeating-linear-gradient(
      135deg,
      color-mix(in srgb, var(--wrap) 34%, transparent) 0 1px,
      transparent 1px 9px
    );
  }
  .course.clad {
    background: repeating-linear-gradient(
      0deg,
      color-mix(in srgb, var(--clad) 45%, transparent) 0 1px,
      transparent 1px 7px
    );
  }
  .course:is(.wrapped, .clad) :is(.wall, .skin) {
    fill: none;
  }
  .course:is(.wrapped, .clad) .tag {
    padding-inline: 3px;
    background: var(--bare);
  }
  .level {
    position: sticky;
    inset-inline-start: 0;
    z-index: 1;
    align-self: center;
    flex: none;
    width: 3.4rem;
    padding: 0.15rem 0.2rem;
    font: 500 0.8rem/1.15 var(--type-narrow);
    text-align: center;
    background: var(--sheet);
    border: 1px solid var(--line-strong);
    border-radius: 2px;
  }
  .row {
    flex: 1;
    display: flex;
    align-items: flex-end;
    justify-content: space-evenly;
    gap: 4px;
  }
  .ground {
    height: 9px;
    border-block-start: 2px solid var(--ink);
    background: repeating-linear-gradient(120deg, var(--line-strong) 0 1px, transparent 1px 8px);
  }
  .opening {
    flex: none;
    display: flex;
    flex-direction: column;
    align-items: center;
    min-width: 2.75rem;
    padding: 2px;
    background: none;
    border: 1px solid transparent;
    border-radius: 3px;
  }
  .opening:hover {
    border-color: var(--line-strong);
  }
  .opening[aria-pressed='true'] {
    background: var(--sheet);
    border-color: var(--focus);
    box-shadow: 0 0 0 1px var(--focus);
  }
  .tag {
    margin-top: 3px;
    font: 500 0.78rem/1.15 var(--type-narrow);
    white-space: nowrap;
  }
  .tag.small {
    margin: 0;
    font-weight: 400;
    color: var(--ink);
  }
`;

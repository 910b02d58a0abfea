import { css } from 'lit';

export const stepsPageStyles = css`
  header {
    display: flex;
    justify-content: space-between;
    align-items: center;
    gap: 0.75rem;
  }
  a {
    display: inline-flex;
    align-items: center;
    min-height: 48px;
    color: var(--accent);
    font-weight: 500;
  }
  .wait {
    margin: 0.4rem 0;
    padding: 0.5rem 0.7rem;
    background: var(--wrap-wash);
    border: 1px dashed var(--wrap);
    border-radius: 3px;
  }
  .wait p {
    margin: 0;
  }
  .caution {
    font-size: 0.85rem;
    color: var(--ink-soft);
  }
  .rough {
    margin: 0.4rem 0;
    padding: 0.2rem 0.7rem;
    background: var(--sheet);
    border: 1px solid var(--line-strong);
    border-radius: 3px;
  }
  .rough p {
    margin: 0.3rem 0;
  }
  .rough.report {
    border: 2px dashed var(--alarm);
  }
  .rough.report b {
    color: var(--alarm);
  }
  li a {
    min-height: 56px;
  }
`;

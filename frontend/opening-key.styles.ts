import { css } from 'lit';

export const openingKeyStyles = css`
  :host {
    display: block;
  }
  .key {
    display: flex;
    flex-wrap: wrap;
    gap: 0.25rem 1.1rem;
    margin: 0.6rem 0 0;
    padding: 0;
    list-style: none;
    font-size: 0.82rem;
    color: var(--ink-soft);
  }
  .key li {
    display: flex;
    align-items: center;
    gap: 0.35rem;
  }
  .key svg {
    flex: none;
  }
`;

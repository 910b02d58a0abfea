import { css } from 'lit';

/** Made for a gloved thumb: nothing that is tapped is lower or narrower than 48 px. */
export const stepMarkerStyles = css`
  :host {
    display: block;
    padding-bottom: 9rem;
  }
  h1 {
    margin: 0;
    font-size: 1.5rem;
    line-height: 1.2;
  }
  h2 {
    margin: 1.1rem 0 0.4rem;
    font-size: 1.05rem;
  }
  p {
    margin: 0.2rem 0;
  }
  .soft {
    color: var(--ink-soft);
  }
  button,
  .photo {
    min-height: 48px;
    min-width: 48px;
    padding: 0.4rem 0.9rem;
    border: 1px solid var(--line-strong);
    border-radius: 3px;
    background: var(--raised);
    color: var(--ink);
  }
  .card {
    margin: 0.7rem 0;
    padding: 0.7rem 0.8rem;
    background: var(--sheet);
    border: 1px solid var(--line-strong);
    border-radius: 3px;
  }
  .card.refused {
    background: var(--alarm-wash);
    border: 2px solid var(--alarm);
  }
  .card.refused h2 {
    margin-top: 0;
    color: var(--alarm);
  }
  .card.waiting {
    border-style: dashed;
  }
  .card ul {
    margin: 0.3rem 0;
    padding-inline-start: 1.1rem;
  }
  .rating {
    font-weight: 600;
  }
  .rating.open {
    color: var(--alarm);
  }
  .rating.safe {
    color: var(--good);
  }
  .drawing {
    --lap-paper: var(--sheet);
    --lap-text: var(--ink);
    --lap-muted: var(--ink-soft);
    --lap-wall: var(--bare);
    --lap-glass: var(--glass);
    --lap-flashing: var(--install);
    --lap-barrier: var(--wrap);
    --lap-cladding: var(--clad);
    --lap-water: var(--rain);
    --lap-fault: var(--alarm);
    --lap-safe: var(--good);
    --lap-font: var(--type);
    overflow-x: auto;
  }
  .drawing svg {
    display: block;
    max-width: 100%;
    height: auto;
    margin-inline: auto;
  }
  ol {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  li {
    display: flex;
    gap: 0.4rem;
    border-bottom: 1px solid var(--line);
  }
  li > button:first-child {
    flex: 1;
    display: grid;
    grid-template-columns: 1.6rem 1fr;
    gap: 0 0.6rem;
    align-items: start;
    min-height: 56px;
    padding: 0.5rem 0.3rem;
    text-align: start;
    border: 0;
    background: none;
    touch-action: manipulation;
    user-select: none;
    -webkit-touch-callout: none;
  }
  li small {
    grid-column: 2;
    color: var(--ink-soft);
  }
  li.next > button:first-child {
    font-weight: 600;
  }
  li.next {
    background: var(--install-wash);
  }
  .tick {
    width: 1.5rem;
    height: 1.5rem;
    fill: none;
    stroke: var(--line-strong);
    stroke-width: 2;
  }
  .done .tick {
    stroke: var(--good);
  }
  .next .tick {
    stroke: var(--install);
  }
  .waiting .tick {
    stroke: var(--wrap);
    stroke-dasharray: 3 2;
  }
  .thumb {
    position: fixed;
    inset: auto 0 0;
    z-index: 1;
    padding: 0.6rem 0.75rem calc(0.6rem + env(safe-area-inset-bottom));
    background: var(--sheet);
    border-top: 1px solid var(--line-strong);
  }
  .thumb > div {
    display: grid;
    grid-template-columns: 1fr auto;
    gap: 0.5rem;
    max-width: 44rem;
    margin-inline: auto;
  }
  .thumb .step {
    grid-column: 1 / -1;
    overflow: hidden;
    display: -webkit-box;
    -webkit-box-orient: vertical;
    -webkit-line-clamp: 2;
  }
  .thumb .mark-it {
    min-height: 60px;
    font-weight: 600;
    font-size: 1.1rem;
    color: var(--on-accent);
    background: var(--accent);
    border-color: var(--accent);
  }
  .photo {
    display: grid;
    place-items: center;
    min-height: 60px;
    position: relative;
    cursor: pointer;
  }
  .photo:focus-within {
    outline: 2px solid var(--focus);
    outline-offset: 1px;
  }
  .photo input {
    position: absolute;
    inset: 0;
    opacity: 0;
    width: 100%;
    cursor: pointer;
  }
  dialog {
    width: min(30rem, calc(100vw - 1.5rem));
    box-sizing: border-box;
    padding: 1rem;
    color: var(--ink);
    background: var(--sheet);
    border: 1px solid var(--line-strong);
    border-radius: 3px;
  }
  dialog h2 {
    margin-top: 0;
  }
  dialog::backdrop {
    background: rgb(0 0 0 / 50%);
  }
  dialog label {
    display: block;
    margin: 0.6rem 0 0.2rem;
  }
  dialog textarea {
    width: 100%;
    min-height: 5rem;
    box-sizing: border-box;
    font: inherit;
    color: inherit;
    background: var(--raised);
    border: 1px solid var(--line-strong);
    border-radius: 3px;
  }
  dialog .buttons {
    display: grid;
    gap: 0.5rem;
    margin-top: 0.8rem;
  }
  @media (min-width: 60rem) {
    .sides {
      display: grid;
      grid-template-columns: 1fr 1fr;
      gap: 0 1.5rem;
      align-items: start;
    }
  }
`;

import { LitElement, css, html, svg, type SVGTemplateResult, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { shared } from './shared';
import { speechOf, words } from './speech';

type Theme = 'system' | 'light' | 'dark';

const THEMES: Record<Theme, { name: string; scheme: string; icon: SVGTemplateResult }> = {
  system: {
    name: words('Theme of the system'),
    scheme: 'light dark',
    icon: svg`<path d="M8 2.5a5.5 5.5 0 0 1 0 11Z" fill="currentColor"/><circle cx="8" cy="8" r="5.5"/>`,
  },
  light: {
    name: words('Light theme'),
    scheme: 'light',
    icon: svg`<circle cx="8" cy="8" r="3"/><path d="M8 1v2M8 13v2M1 8h2M13 8h2M3 3l1.4 1.4M11.6 11.6 13 13M13 3l-1.4 1.4M4.4 11.6 3 13"/>`,
  },
  dark: {
    name: words('Dark theme'),
    scheme: 'dark',
    icon: svg`<path d="M10.5 2.4a6 6 0 1 0 3 8.2 5 5 0 0 1-3-8.2Z"/>`,
  },
};

const KEY = 'drylap-theme';

function remembered(): Theme {
  const kept = localStorage.getItem(KEY);
  return kept === 'light' || kept === 'dark' ? kept : 'system';
}

function apply(theme: Theme): void {
  document.documentElement.style.colorScheme = THEMES[theme].scheme;
}

// before anything is painted, so that the page does not flash
apply(remembered());

/** Three small buttons: by the system, light, dark. */
@customElement('theme-switch')
export class ThemeSwitch extends LitElement {
  static override styles = [
    shared,
    css`
      div {
        display: inline-flex;
        border: 1px solid var(--line-strong);
        border-radius: 3px;
        overflow: hidden;
      }
      button {
        display: grid;
        place-items: center;
        width: 2.1rem;
        height: 2.1rem;
        padding: 0;
        border: 0;
        background: var(--raised);
      }
      button[aria-pressed='true'] {
        background: var(--accent);
        color: var(--on-accent);
      }
      button:focus-visible {
        outline-offset: -3px;
      }
      svg {
        fill: none;
        stroke: currentColor;
        stroke-width: 1.3;
        stroke-linecap: round;
      }
    `,
  ];

  @state() private theme: Theme = remembered();

  override render(): TemplateResult {
    const say = speechOf(this);
    return html`<div role="group" aria-label=${say('Theme')}>
      ${(Object.keys(THEMES) as Theme[]).map(
        (theme) =>
          html`<button
            aria-pressed=${theme === this.theme}
            aria-label=${say(THEMES[theme].name)}
            title=${say(THEMES[theme].name)}
            @click=${() => this.choose(theme)}
          >
            <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">${THEMES[theme].icon}</svg>
          </button>`,
      )}
    </div>`;
  }

  private choose(theme: Theme): void {
    this.theme = theme;
    if (theme === 'system') localStorage.removeItem(KEY);
    else localStorage.setItem(KEY, theme);
    apply(theme);
  }
}

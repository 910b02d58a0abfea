import { html, nothing, type TemplateResult } from 'lit';
import type { Say } from './speech';
import type { OpeningNow, RoughNow } from './step-records';

/** What the rough opening was found to be, before anything is set into it; measuring itself needs a connection. */
export function roughLine(say: Say, opening: OpeningNow, rough: RoughNow | undefined): TemplateResult | typeof nothing {
  if (!rough || (!rough.grade && !rough.mayMeasure)) return nothing;
  const where = `/rough-opening?folder=${opening.folder}&opening=${encodeURIComponent(opening.opening)}`;
  return html`<div class="rough ${rough.grade ?? ''}">
    ${
      rough.grade
        ? html`<p>
            ${say('Rough opening:')} <b>${rough.words}</b>. ${rough.meaning} ${say('Measured by {0}.', rough.by ?? '')}
          </p>`
        : html`<p>${say('The rough opening was not measured yet.')}</p>`
    }
    <a href=${where}>${rough.mayMeasure ? say('Measure it') : say('How it was measured')}</a>
  </div>`;
}

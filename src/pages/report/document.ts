import { type Content, element, type Markup, styleElement } from '../markup.js';
import { footRules, policyOf, STYLE_RULES } from './stylesheet.js';

/** A whole HTML document, and what a browser may do with it. */
export interface Page {
  readonly html: string;
  /** Value of the header Content-Security-Policy to send with it. */
  readonly policy: string;
}

/** What a page is made of, from top to bottom. */
interface PageParts {
  readonly title: string;
  /** Words at the foot of each printed page, before its number. */
  readonly foot: string;
  readonly header: Markup;
  readonly nav?: Markup;
  readonly content: readonly Content[];
}

/** An HTML document for screen and paper, without scripts and with nothing from elsewhere. */
export function documentOf({ title, foot, header, nav, content }: PageParts): Page {
  const styles = [STYLE_RULES, footRules(foot)];
  const policy = policyOf(styles);
  const head = element(
    'head',
    {},
    element('meta', { charset: 'utf-8' }),
    // For a copy that was saved, which has no headers.
    element('meta', { 'http-equiv': 'Content-Security-Policy', content: policy }),
    element('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
    element('meta', { name: 'referrer', content: 'no-referrer' }),
    element('title', {}, title),
    ...styles.map(styleElement),
  );
  const body = element(
    'body',
    {},
    element('a', { class: 'skip', href: '#content' }, 'Skip to the content'),
    header,
    ...(nav === undefined ? [] : [nav]),
    element('main', { id: 'content', tabindex: '-1' }, ...content),
  );
  return {
    html: `<!DOCTYPE html>\n${element('html', { lang: 'en' }, head, body).markup}\n`,
    policy: `${policy}; frame-ancestors 'none'`,
  };
}

import { type Content, element, styleElement } from '../markup.js';
import { SAVED_POLICY, STYLE_RULES } from './stylesheet.js';

/** A whole HTML document around its content. */
export function documentOf(title: string, content: readonly Content[]): string {
  const head = element(
    'head',
    {},
    element('meta', { charset: 'utf-8' }),
    element('meta', { 'http-equiv': 'Content-Security-Policy', content: SAVED_POLICY }),
    element('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
    element('meta', { name: 'referrer', content: 'no-referrer' }),
    element('title', {}, title),
    styleElement(STYLE_RULES),
  );
  const body = element('body', {}, element('main', {}, ...content));
  return `<!DOCTYPE html>\n${element('html', { lang: 'en' }, head, body).markup}\n`;
}

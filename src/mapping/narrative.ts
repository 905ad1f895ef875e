import type { Narrative } from 'fhir/r4.js';

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Plain sentences as the human-readable text of a resource, one paragraph each. */
export function narrative(sentences: readonly string[]): Narrative {
  const paragraphs = sentences.map((sentence) => `<p>${escapeXhtml(sentence)}</p>`).join('');
  return {
    status: 'generated',
    div: `<div xmlns="http://www.w3.org/1999/xhtml">${paragraphs}</div>`,
  };
}

/** A display within a sentence; abbreviations keep their capitals. */
export function lowered(text: string): string {
  return /^[A-Z][a-z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}

function escapeXhtml(text: string): string {
  return text.replaceAll(/[&<>"']/g, (character) => ESCAPES[character] ?? character);
}

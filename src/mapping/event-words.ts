import type { EventMessage } from '../record/index.js';
import { adverseEventCode, ITEMS } from '../terminology/index.js';
import type { MappingContext } from './context.js';
import { EVENT_FORMS } from './event-forms.table.js';
import { gradesInWords } from './event-grades.js';
import { codeOfProcedure } from './event-resources.js';

/** What happened after the dissection, one plain sentence an event. */
export function eventSentences(context: MappingContext): readonly string[] {
  return context.known.events.map((event) => {
    const grades = gradesInWords(context, event);
    const graded = grades.length === 0 ? '' : `: ${grades.join(', ')}`;
    return `${nameOf(context, event)}, ${event.fields.occurredOn}${graded}.`;
  });
}

function nameOf(context: MappingContext, event: EventMessage): string {
  const form = EVENT_FORMS[event.fields.kind];
  switch (form.as) {
    case 'Condition':
      return adverseEventCode(form.complication, context.fields.lesion.organ).text;
    case 'Procedure':
      return codeOfProcedure(context, event).text;
    case 'Observation':
      return ITEMS[form.item].text;
  }
}

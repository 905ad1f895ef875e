import type { Media } from 'fhir/r4.js';
import { WORD_CODES } from '../terminology/index.js';
import { toBodySite } from './condition.js';
import { head, type MappingContext } from './context.js';
import type { Draft } from './draft.js';

/** Images by their address; no bytes travel. */
export function toMedia(context: MappingContext): readonly Draft<Media>[] {
  const [bodySite = {}] = toBodySite(context).slice(-1);
  return (context.fields.lesion.images ?? []).map(({ shows, url }, i) => {
    const key = `image.${i + 1}`;
    return {
      key,
      resource: {
        resourceType: 'Media',
        ...head(context, 'Media', key, 'dr-media'),
        partOf: [context.procedure],
        status: 'completed',
        view: context.concept(WORD_CODES.imageSubject[shows]),
        subject: context.patient,
        ...context.inEncounter,
        createdDateTime: context.fields.times.scopeInAt,
        operator: context.operator,
        bodySite,
        content: { url },
      },
    };
  });
}

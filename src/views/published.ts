import esdCase from '../../profiles/views/esd_case.json' with { type: 'json' };
import esdComplication from '../../profiles/views/esd_complication.json' with { type: 'json' };
import esdFinding from '../../profiles/views/esd_finding.json' with { type: 'json' };
import esdFollowUp from '../../profiles/views/esd_follow_up.json' with { type: 'json' };
import { invariant } from '../kernel/index.js';
import { parseView, type View } from './view.js';

/** The views of this package, by name. */
export const publishedViews = (): ReadonlyMap<string, View> =>
  new Map(
    [esdCase, esdFinding, esdComplication, esdFollowUp].map((definition) => {
      const view = parseView(definition);
      invariant(view.ok, 'a published view is one');
      return [view.value.name, view.value];
    }),
  );

import { type Organ, SITE_ORGAN, type Site, type Tumour } from '../words.table.js';
import { BORDERS, HOME_OF } from './tumours.table.js';

/** Whether a tumour of the lineage can lie in the organ; without a site the doubt counts. */
export function arisesIn(tumour: Tumour, organ: Organ, site: Site | undefined): boolean {
  const organs: readonly Organ[] = HOME_OF[tumour].organs;
  return organs.includes(organ) || mayBe(HOME_OF[tumour].sites, organ, site);
}

/** Whether a site is in the organ or at its border with the place that another person named. */
export function mayLieIn(site: Site, organ: Organ, named: Site | undefined): boolean {
  return (
    SITE_ORGAN[site] === organ ||
    BORDERS.some((border) => border.includes(site) && mayBe(border, organ, named))
  );
}

const mayBe = (sites: readonly Site[], organ: Organ, site: Site | undefined): boolean =>
  site === undefined ? sites.some((near) => SITE_ORGAN[near] === organ) : sites.includes(site);

/*
 * Where the numbers of the generator come from. "Derived" means: calculated from the numbers of
 * the place that is named, beside which the calculation stands.
 */

export const INVENTED = 'invented for this generator';
export const COMMON = 'common practice, no source';
/** 590 colorectal dissections by experts and trainees. */
export const EXPERTS_TRAINEES = 'PMC7411630, abstract';
/** Rectal dissections with and without severe fibrosis. */
export const RECTAL_FIBROSIS = 'GE Port J Gastroenterol 2023, abstract';
/** 515 lesions of one operator who taught himself. */
export const UNTUTORED = 'Endosc Int Open 2024;12:E905, abstract';
export const GASTRIC_TRAINEES = 'Surg Endosc 2017;31:3614, abstract';
export const GASTRIC_OPERATORS = 'Ther Adv Gastroenterol 2025, abstract';
export const LOW_VOLUME = 'Ann Gastroenterol 2021, abstract';
export const BEST_J = 'Hatta W et al. Gut 2021;70:476-484, abstract and risk table';
export const BEST_J_POINTS = 'Hatta W et al. Gut 2021;70:476-484, points read in second hand';
export const LIMOGES = 'Albouys J et al. Endoscopy 2024;56:110-118, abstract';
export const STRICTURE_REVIEW = 'Japan Esophageal Society 2022, read in second hand';
/** Recurrence by the horizontal margin after en bloc resection. */
export const MARGIN_RECURRENCE = 'R-ESD study, doi 10.1055/a-1960-3552, abstract';
export const ECURA = 'Hatta W et al. Am J Gastroenterol 2017;112:874-881, abstract';
export const POLYPECTOMY_2020 = 'ESGE post-polypectomy 2020, Endoscopy 2020;52:687-700';
export const STAGE_ONE_2019 = 'ESGE/ESDO 2019, Endoscopy 2019;51:266-277, abstract';
export const ESGE_2022 = 'ESGE 2022, Endoscopy 2022;54:591-622, from memory';

/**
 * Class after each step of a life, read by hand from the guideline; a case that is withdrawn keeps
 * its class, and no class is known before the case itself.
 *
 * ESGE: Pimentel-Nunes P et al. Endoscopy 2022;54:591-622, abstract. Very low risk: en bloc, R0,
 * within the mucosa, differentiated, no ulcer, no vessel invasion. Low risk: en bloc, R0, colorectal
 * carcinoma of at most 1000 um, budding grade 1, vessels free. Local risk: piecemeal or a lateral
 * margin that is not free, with no criterion of high risk. High risk: vessel invasion, deeper than
 * 500 um (stomach) or 1000 um (colorectum), budding of grade 2 or 3.
 */
export const VERDICTS: Readonly<Record<string, readonly string[]>> = {
  // An emergency visit, a status, a booking and a look change no class; the report gives it.
  curative: ['open', 'open', 'very-low-risk', 'very-low-risk', 'very-low-risk', 'very-low-risk'],
  // A recurrence is an outcome of the resection, and no criterion of its class.
  'local-risk': ['open', 'local-risk', 'local-risk', 'local-risk', 'local-risk'],
  // A lymphatic vessel, 720 um.
  surgery: ['open', 'high-risk', 'high-risk', 'high-risk', 'high-risk'],
  // 820 um, budding grade 1, no vessel.
  bleeding: ['open', 'open', 'open', 'low-risk', 'low-risk'],
  // An adenoma is within the mucosa; the amended report finds 300 um. Bookings change no class.
  amended: ['open', 'open', 'very-low-risk', 'very-low-risk', 'low-risk', 'low-risk'],
  // Two cases: the withdrawn one, and the one that replaces it.
  'wrong-patient': ['open', 'open', 'open', 'very-low-risk'],
  // Within the mucosa: Barrett carcinoma between the two muscularis mucosae.
  'report-first': ['waiting', 'very-low-risk', 'very-low-risk'],
  // The interim report tells neither vessels nor budding.
  'no-surgery': ['open', 'open', 'high-risk', 'high-risk', 'high-risk'],
};

/** Places of a colorectal lesion from its beginning to its end; then the unspecific words. */
export const PLACES = [
  'caecum',
  'ascending',
  'hepatic-flexure',
  'transverse',
  'splenic-flexure',
  'descending',
  'sigmoid',
  'rectosigmoid',
  'rectum',
  'colon',
  'flexure',
] as const;

/** The places that a word can mean: `colon` any above the rectum, `flexure` one of the two. */
export function possiblePlaces(word: string): readonly string[] {
  if (word === 'flexure') return ['hepatic-flexure', 'splenic-flexure'];
  if (word === 'colon') return PLACES.slice(0, PLACES.indexOf('rectum'));
  return [word];
}

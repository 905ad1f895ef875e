/** Every work that a rule rests on, once. */
export const BIBLIOGRAPHY = {
  kim2014: {
    citation: 'Kim GH et al. Clin Endosc 2014;47:516',
    about: 'stricture after resection in oesophagus and stomach',
  },
  jes2022: {
    citation: 'Japan Esophageal Society, esophageal cancer practice guidelines 2022',
    about: 'stricture and its prevention after wide oesophageal resection',
  },
  esdPractice: {
    citation: 'Common practice in endoscopic submucosal dissection, no source',
    about: 'formulae and terms in general use',
  },
} as const satisfies Record<string, { readonly citation: string; readonly about: string }>;

export type WorkKey = keyof typeof BIBLIOGRAPHY;

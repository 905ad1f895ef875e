import type { Organ, Site, STOMACH_THIRDS, WALLS } from '../../contract/index.js';
import { type CodeRef, setRefs } from '../code-ref.js';

/**
 * Body sites. SNOMED CT says the part where it is free to send, else the organ; ICD-O-3 topography
 * says the part to everyone. Source: shared/terminology/README.md, "Body sites outside the Global
 * Patient Set".
 *
 * The junction stands under C16.0 and the ileocaecal valve under C18.0 of ICD-O-3, as its index
 * has them. Anal canal and junctions get a wider region instead of an organ that they only border.
 */
const place = setRefs('gi-subsite', {
  oesophagus: { open: ['organ-oesophagus', 'topo-c15-9'] },
  stomach: { open: ['organ-stomach', 'topo-c16-9'] },
  duodenum: { open: ['organ-duodenum', 'topo-c17-0'] },
  colon: { open: ['organ-colon', 'topo-c18-9'] },
  rectum: { open: ['organ-rectum', 'topo-c20-9'] },
  'oesophagus-cervical': {
    open: ['site-oesophagus-cervical', 'topo-c15-0'],
    broader: ['organ-oesophagus'],
  },
  'oesophagus-upper-third': {
    open: ['site-oesophagus-upper-third', 'topo-c15-3'],
    broader: ['organ-oesophagus'],
  },
  'oesophagus-middle-third': {
    open: ['site-oesophagus-middle-third', 'topo-c15-4'],
    broader: ['organ-oesophagus'],
  },
  'oesophagus-lower-third': {
    open: ['site-oesophagus-lower-third', 'topo-c15-5'],
    broader: ['organ-oesophagus'],
  },
  'oesophagus-abdominal': {
    open: ['site-oesophagus-abdominal', 'topo-c15-2'],
    broader: ['organ-oesophagus'],
  },
  'oesophagogastric-junction': {
    open: ['site-oesophagogastric-junction', 'topo-c16-0'],
    broader: ['site-upper-gi-tract'],
  },
  'stomach-cardia': { open: ['topo-c16-0'], broader: ['organ-stomach'] },
  'stomach-fundus': { open: ['site-stomach-fundus', 'topo-c16-1'], broader: ['organ-stomach'] },
  'stomach-body': { open: ['site-stomach-body', 'topo-c16-2'], broader: ['organ-stomach'] },
  'stomach-angulus': { broader: ['organ-stomach', 'topo-c16-9'] },
  'stomach-antrum': { open: ['site-stomach-antrum', 'topo-c16-3'], broader: ['organ-stomach'] },
  'stomach-pylorus': { open: ['site-stomach-pylorus', 'topo-c16-4'], broader: ['organ-stomach'] },
  'duodenum-bulb': { broader: ['organ-duodenum', 'topo-c17-0'] },
  'duodenum-second-part': { broader: ['organ-duodenum', 'topo-c17-0'] },
  'duodenum-third-part': { broader: ['organ-duodenum', 'topo-c17-0'] },
  caecum: { open: ['site-caecum', 'topo-c18-0'] },
  'ileocaecal-valve': { open: ['site-ileocaecal-valve', 'topo-c18-0'] },
  'ascending-colon': { open: ['site-ascending-colon', 'topo-c18-2'] },
  'hepatic-flexure': { open: ['site-hepatic-flexure', 'topo-c18-3'] },
  'transverse-colon': { open: ['site-transverse-colon', 'topo-c18-4'] },
  'splenic-flexure': { open: ['site-splenic-flexure', 'topo-c18-5'] },
  'descending-colon': { open: ['site-descending-colon', 'topo-c18-6'] },
  'sigmoid-colon': { open: ['site-sigmoid-colon', 'topo-c18-7'] },
  'rectosigmoid-junction': {
    open: ['site-rectosigmoid-junction', 'topo-c19-9'],
    broader: ['organ-large-intestine'],
  },
  'rectum-upper': { broader: ['organ-rectum', 'topo-c20-9'] },
  'rectum-middle': { broader: ['organ-rectum', 'topo-c20-9'] },
  'rectum-lower': { broader: ['organ-rectum', 'topo-c20-9'] },
  'anal-canal': { open: ['site-anal-canal', 'topo-c21-1'], broader: ['site-gi-tract'] },
});

export const SITE_WORDS = {
  organ: place satisfies Record<Organ, CodeRef>,
  site: place satisfies Record<Site, CodeRef>,
  wall: setRefs('wall-position', {
    anterior: { open: ['qualifier-anterior'] },
    posterior: { open: ['qualifier-posterior'] },
    left: { open: ['qualifier-left'] },
    right: { open: ['qualifier-right'] },
    'lesser-curvature': { open: ['site-stomach-lesser-curvature'] },
    'greater-curvature': { open: ['site-stomach-greater-curvature'] },
  }) satisfies Record<(typeof WALLS)[number], CodeRef>,
  stomachThird: setRefs('stomach-third') satisfies Record<(typeof STOMACH_THIRDS)[number], CodeRef>,
} as const;

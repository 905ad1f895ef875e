import { AGENT_CLASS, AGENTS, SITE_ORGAN, SITES } from '../../src/contract/index.js';

/** A case message as plain JSON; every field may be there or not. */
// biome-ignore lint/suspicious/noExplicitAny: a document of any content, to be changed at will
export type Draft = any;

/** When the steps of a procedure fall, in whole minutes after the scope went in. */
export interface Course {
  /** Milliseconds of the epoch. */
  readonly scopeInMs: number;
  /** Four gaps between the five steps, 1 or more minutes each. */
  readonly gaps: readonly number[];
  readonly offsetMin: number;
}

const STEPS = [
  'scopeInAt',
  'firstInjectionAt',
  'firstIncisionAt',
  'dissectionEndAt',
  'scopeOutAt',
] as const;

/**
 * Changes a draft of the right shape into a case that contradicts itself nowhere: an own account
 * of the rules across fields, beside the one under test.
 */
export function consistentCase(draft: Draft, course: Course): Draft {
  const sent = structuredClone(draft);
  settleOutcome(sent);
  settleTimes(sent, course);
  settleAxes(sent);
  settleWords(sent);
  settleEquipment(sent);
  return sent;
}

function settleOutcome({ resection, specimen, times, safety }: Draft): void {
  const unfinished = ['abandoned', 'not-started'].includes(resection.outcome);
  if (unfinished && resection.complete) resection.complete = false;
  if (resection.pieces !== undefined) {
    if (resection.outcome === 'en-bloc') resection.pieces = 1;
    else if (resection.pieces === 1 && resection.complete) resection.pieces = 3;
  }
  if (resection.outcome === 'not-started') {
    delete times.firstIncisionAt;
    delete times.dissectionEndAt;
    if (specimen !== undefined) specimen.retrieved = false;
  }
  if (specimen?.retrieved === false) {
    for (const key of Object.keys(specimen)) if (key !== 'retrieved') delete specimen[key];
  }
  if (safety?.perforation && ['IV', 'V'].includes(safety.muscleInjury)) {
    safety.perforation.occurred = true;
  }
}

function settleTimes(sent: Draft, { scopeInMs, gaps, offsetMin }: Course): void {
  const afterMin = STEPS.map((_, i) => gaps.slice(0, i).reduce((a, b) => a + b, 0));
  const lastMin = afterMin.at(-1) ?? 0;
  const at = (minutes: number) => instantAt(scopeInMs + minutes * 60_000, offsetMin);
  STEPS.forEach((step, i) => {
    if (sent.times[step] !== undefined) sent.times[step] = at(afterMin[i] ?? 0);
  });
  sent.sentAt = at(lastMin + 7);
  const within = [
    [sent.specimen, 'retrievedAt'],
    [sent.safety?.siteInspection, 'inspectedAt'],
    [sent.safety?.perforation, 'at'],
    ...(sent.safety?.vessels ?? []).map((vessel: Draft) => [vessel, 'at']),
    ...(sent.dissection?.incidents ?? []).map((incident: Draft) => [incident, 'at']),
  ];
  within.forEach(([holder, key], i) => {
    if (holder?.[key] !== undefined) holder[key] = at((lastMin * (i % 4)) / 3);
  });
  const day = sent.times.scopeInAt.slice(0, 10);
  if (sent.patient.bornOn > day) sent.patient.bornOn = day;
}

/** @returns ISO 8601 with seconds and that offset */
function instantAt(ms: number, offsetMin: number): string {
  const clock = new Date(Math.round(ms / 1000) * 1000 + offsetMin * 60_000).toISOString();
  const size = Math.abs(offsetMin);
  const two = (n: number) => String(n).padStart(2, '0');
  const sign = offsetMin < 0 ? '-' : '+';
  return `${clock.slice(0, 19)}${sign}${two(Math.floor(size / 60))}:${two(size % 60)}`;
}

function settleAxes({ lesion, defect, specimen, resection }: Draft): void {
  const [long, short] = ['longAxisMm', 'shortAxisMm'];
  for (const piece of specimen?.pieces ?? []) capped(piece, [long, short]);
  for (const holder of [lesion, defect]) ordered(holder, long, short);
  ordered(lesion, 'pragueMaximumCm', 'pragueCircumferentialCm');
  if (specimen === undefined) return;
  capped(specimen, [long, short]);
  if (resection.outcome === 'en-bloc') {
    atMost(specimen, 'lesionLongAxisMm', specimen.longAxisMm);
    atMost(specimen, 'lesionShortAxisMm', specimen.shortAxisMm);
  }
  atMost(specimen, 'lesionShortAxisMm', specimen.lesionLongAxisMm);
}

/** 200 mm in both axes are 314 cm2. */
function capped(holder: Draft, [long = '', short = '']: readonly string[]): void {
  for (const key of [long, short]) atMost(holder, key, 200);
  ordered(holder, long, short);
}

function ordered(holder: Draft, long: string, short: string): void {
  atMost(holder, short, holder?.[long]);
}

function atMost(holder: Draft, key: string, limit: number | undefined): void {
  if (limit !== undefined && holder?.[key] > limit) holder[key] = limit;
}

function settleWords({ lesion, before }: Draft): void {
  const ofOrgan = SITES.filter((site) => SITE_ORGAN[site] === lesion.organ);
  if (lesion.site !== undefined && !ofOrgan.includes(lesion.site)) lesion.site = ofOrgan[0];
  if (before?.antithrombotics === undefined) return;
  const seen = new Set<string>();
  before.antithrombotics = before.antithrombotics.filter((drug: Draft) => {
    if (drug.agent !== undefined) drug.class = classOf(drug.agent);
    const key = drug.agent ?? drug.class;
    return seen.has(key) ? false : seen.add(key);
  });
}

/** Fluid goes through a knife that has a channel, and every instrument fits the endoscope. */
function settleEquipment({ equipment, injection }: Draft): void {
  const instruments = [...(equipment?.knives ?? []), ...(equipment?.accessories ?? [])];
  for (const instrument of instruments) {
    atMost(instrument, 'minChannelMm', equipment.endoscope?.channelMm);
  }
  const [knife] = equipment?.knives ?? [];
  if (injection?.routes?.includes('through-knife') && knife) knife.injectionChannel = true;
}

const classOf = (agent: string): string =>
  Object.entries(AGENT_CLASS).find(([name]) => name === agent)?.[1] ?? '';

/** An agent that is not of this class. */
export const agentOfAnotherClass = (drugClass: string): string =>
  AGENTS.find((agent) => AGENT_CLASS[agent] !== drugClass) ?? '';

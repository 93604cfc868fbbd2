/** Colours of the stages: one run from light to dark, so that they hold in greyscale and for colour-blind eyes. */

/** How far a batch has come, as a bar shows it. */
export type Stage = 'rooting' | 'rooted' | 'pottedOn' | 'hardening' | 'plantedOut';

export const stages: readonly Stage[] = ['rooting', 'rooted', 'pottedOn', 'hardening', 'plantedOut'];

/** Each at least 12 of 100 darker in CIE lightness than the one before: a test holds that. */
export const stageColour: Readonly<Record<Stage, string>> = {
  rooting: '#f5e0a3',
  rooted: '#9fbf72',
  pottedOn: '#4a9a86',
  hardening: '#3a6491',
  plantedOut: '#2a2a5c',
};

export const ink = '#1d1d1b';
export const faintInk = '#5c5c58';
export const paper = '#ffffff';
export const rule = '#d9d9d2';
export const frostColour = '#7a8fb0';
export const todayColour = '#b5432a';

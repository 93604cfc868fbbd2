/** Verbs of bringing plants into pots of their own, for heads, and whose or what those pots are. */
import { pastOf } from '../rule.js';

/** Verbs of bringing plants into pots, whatever the pots are. */
export const INTO_POTS = `put~|transplant~|transfer~|separated|divided|${pastOf`
  move go shift plant pop place rehouse chuck sling bung
`}`;

/** The same, before a pot's size alone. */
export const KNOCKED_INTO_POTS = `bump~|upsize~|upgrade~|graduated|sized|singled|settled|${pastOf`
  step set whack fire lob shove plonk bring rehome promote split
`}`;

export const FINAL = 'final|forever|permanent|own|bigger|larger|new|clay|plastic';
export const THEIR_OWN = 'bigger|larger|little|small|their|its|individual|separate|single|own|new';

/** What frost, heat and drought took: "two froze", "the heat got four". */
import type { Piece } from '../../pieces/pieces.js';
import { type Rule, wordAt } from '../rule.js';
import { counted, needsPlantOrCount } from './counted.js';

/** "Went in Monday's frost", and no cold frame. */
const wentIn = (name: string, words: string, cause: 'frost' | 'drought'): Rule => ({
  name: `<count> went in ${name}`,
  kind: 'loss',
  head: `go~past|gone|perish~past in|with? the|that|this|last? <when>? late|hard|bad|big|first? ${words}`,
  shape: 'subject',
  cause,
  when: counted,
  unless: (p, _f, t) => /^(?:frame|frames|house|room|store|tap)$/.test(wordAt(p, t)),
  phrasings:
    cause === 'frost'
      ? ["half the Salt Harrier went in Monday's frost", 'three of the Salt Harrier went in that hard frost']
      : ['three of the Salt Harrier went in the heatwave'],
  mustNot: ['three of the Salt Harrier went in the cold frame', 'three Salt Harrier went in the sun room'],
});

/** "Four Salt Harrier", "four of the Salt Harrier": no panes, no pots. */
const namesPlant = (pieces: readonly Piece[], _from: number, to: number): boolean => {
  let at = to;
  while (/^(?:of|the|my|our|those|these|rooted|young|small|little|best)$/.test(wordAt(pieces, at))) at++;
  const plant = pieces[at];
  return plant?.is === 'plant' && (plant.known || !THINGS.test(plant.plant.variety ?? ''));
};

const THINGS =
  /\b(?:panels?|panes?|slates?|tiles?|lids?|trays?|posts?|poles?|sheets?|fences?|doors?|windows?)$/i;

const UNHARMED =
  /^(?:over|about|sideways|askew|lopsided|harm|harmed|unharmed|damage|survived|recover|recovered|recovering|upright)$/;

const WIND_TOOK =
  'wind|winds|gale|gales|storm|hail|hailstones|hailstorm|southerly|northerly|easterly|westerly|lightning has? take~past|get~past|have~past|snap~past|flatten~past|smash~past|finish~past|ripped|wipe~past out|off|down? <count>';

export const weather: readonly Rule[] = [
  wentIn('the frost', 'frost|freeze|cold|snow|frosts', 'frost'),
  wentIn('the heatwave', 'heatwave|heat|drought', 'drought'),
  {
    name: 'the wind took <count> <plant>',
    kind: 'loss',
    head: WIND_TOOK,
    shape: 'object',
    cause: 'broken',
    when: namesPlant,
    // Blown over, and stood up again.
    unless: (p, _f, t) => p.slice(t).some((_, n) => UNHARMED.test(wordAt(p, t + n))),
    phrasings: [
      'the wind took four Salt Harrier',
      'hail got 3 of the Salt Harrier',
      'hail took out six Salt Harrier',
    ],
    mustNot: [
      'out of the wind I took four Salt Harrier',
      'hail got 3 greenhouse panes',
      'gale had three panes out, Salt Harrier all right',
      'storm had two Salt Harrier over, no harm',
    ],
  },
  {
    // Panes and panels, or plants that only fell over.
    name: 'the wind took something else',
    kind: 'aside',
    head: WIND_TOOK,
    shape: 'object',
  },
  {
    name: '<count> froze',
    kind: 'loss',
    head: 'freeze~past|frosted',
    shape: 'subject',
    cause: 'frost',
    when: counted,
  },
  {
    name: '<count> dried up',
    kind: 'loss',
    head: 'dry~past|dried up|out',
    shape: 'subject',
    cause: 'drought',
    when: counted,
  },
  {
    name: '<count> dried to a crisp',
    kind: 'loss',
    head: 'dry~past|dry to a? crisp|crisps|dust|nothing|tinder|sticks',
    shape: 'subject',
    cause: 'drought',
    when: counted,
    mustNot: ['dried to a crisp in here, three Salt Harrier watered'],
  },
  {
    name: 'the frost got <count> <plant>',
    kind: 'loss',
    head: 'frost|cold|freeze catch~|nip~|have~|get~|kill~|take~|do~|finish~|zapped|clobbered|hammered|cost me|us?',
    shape: 'object',
    cause: 'frost',
    when: needsPlantOrCount,
  },
  {
    name: 'the heat got <count> <plant>',
    kind: 'loss',
    head: 'heat|sun|drought|heatwave in? the? <place>? have~|get~|take~|kill~|fry~|cook~|claim~|finish~|do~ off|for?',
    shape: 'object',
    cause: 'drought',
    when: needsPlantOrCount,
  },
];

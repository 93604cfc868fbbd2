/** What frost, heat and drought took: "two froze", "the heat got four". */
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

export const weather: readonly Rule[] = [
  wentIn('the frost', 'frost|freeze|cold|snow|frosts', 'frost'),
  wentIn('the heatwave', 'heatwave|heat|drought', 'drought'),
  {
    name: 'the wind took <count> <plant>',
    kind: 'loss',
    head: 'wind|winds|gale|gales|storm|hail has? take~past|get~past|have~past|snap~past|flatten~past <count>',
    shape: 'object',
    cause: 'broken',
    phrasings: ['the wind took four Salt Harrier'],
    mustNot: ['out of the wind I took four Salt Harrier'],
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
    head: 'dry~past|dried|dry to a? crisp|crisps|dust|nothing|tinder|sticks',
    shape: 'subject',
    cause: 'drought',
    when: counted,
    mustNot: ['dried to a crisp in here, three Salt Harrier watered'],
  },
  {
    name: 'the frost got <count> <plant>',
    kind: 'loss',
    head: 'frost|cold|freeze catch~|nip~|have~|get~|kill~|take~|do~|finish~',
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

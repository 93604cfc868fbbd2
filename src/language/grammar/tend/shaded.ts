/** Shaded: "blinds down", "whitewash on the greenhouse". */
import { closeBehind, endsAt, follows, followsWord, precedes, type Rule, wordAt } from '../rule.js';
import { againstSun, bare, COVERINGS, ON_PAPER, opensPart, verb } from './telling.js';

export const shaded: readonly Rule[] = [
  verb('shade whitewash', 'shade', 'shaded <place>'),
  {
    name: 'hung netting to shade <plant>',
    kind: 'tend',
    head: 'hang~past|rig~past|put~|drape~past .. to shade',
    shape: 'object',
    care: 'shade',
    phrasings: ['hung some netting to shade the Salt Harrier'],
  },
  {
    name: 'blinds down in <place>',
    kind: 'tend',
    head: 'pull~past|drew|close~past|blinds|blind|screens the? down|drawn|pulled|closed|blinds|blind|screens',
    shape: 'object',
    care: 'shade',
    when: (p, f, t) =>
      /^(?:blinds?|screens)$/.test(wordAt(p, f)) !== /^(?:blinds?|screens)$/.test(wordAt(p, t - 1)) &&
      (follows(p, t, 'place') ||
        precedes(p, f, 3, 'place') ||
        (wordAt(p, t) === 'over' && follows(p, t, 'plant'))),
    phrasings: [
      'blinds down over the Salt Harrier',
      'pulled the blinds in the greenhouse',
      'blinds down in the greenhouse',
      'greenhouse blinds drawn',
    ],
  },
  {
    name: 'gave <plant> some shade',
    kind: 'tend',
    head: 'give~past|give~ing .. shade|shading',
    shape: 'object',
    care: 'shade',
    when: (p, _f, t) => endsAt(p, t) || /^(?:for|in|over|until|till|against|at|during)$/.test(wordAt(p, t)),
    unless: (p, _f, t) => /^(?:no|little|enough)$/.test(wordAt(p, t - 2)),
    phrasings: ['gave the Salt Harrier some shade', 'gave the Salt Harrier a bit of shade from the noon sun'],
    mustNot: ['gave Doreen the shade netting for the Salt Harrier', 'gave the Salt Harrier no shade at all'],
  },
  {
    name: 'whitewash on <place>',
    kind: 'tend',
    head: 'whitewash|varishade|coolglass on|onto|applied|painted',
    shape: 'object',
    care: 'shade',
    when: (p, f, t) => closeBehind(p, t, 'place') || precedes(p, f, 3, 'place'),
    phrasings: ['whitewash on the greenhouse'],
    mustNot: ['whitewash on the list for the greenhouse', 'whitewash on the greenhouse coming off'],
    unless: (p, _f, t) => followsWord(p, t, ON_PAPER) || followsWord(p, t, /^(?:off|peeling|flaking|over)$/),
  },
  {
    name: 'shade net up over <plant>',
    kind: 'tend',
    head: 'shade|shading|shadecloth net|netting|cloth? gone|went|put|is? up? over|on|across|above over|across|above?',
    shape: 'object',
    care: 'shade',
    when: (p, f, t) => opensPart(p, f) && closeBehind(p, t, 'place', 'plant'),
    unless: (p, f, t) =>
      /^(?:no|need|needs|more|buy|want|wants|without|needing|the|of)$/.test(wordAt(p, f - 1)) ||
      /^(?:need|needs|want|wants|should|must)$/.test(wordAt(p, f - 2)) ||
      followsWord(p, t, ON_PAPER) ||
      followsWord(p, t, /^(?:blown|blew|torn|ripped|off|needs?)$/),
    phrasings: [
      'shade net up over the Salt Harrier',
      'shading gone up over the Salt Harrier',
      'struck six Tallow Bell, shade cloth on over Salt Harrier',
      'six Tallow Bell watered, shadecloth on the greenhouse',
    ],
    mustNot: [
      'shade net on the shopping list for the Salt Harrier',
      'shade cloth over the greenhouse has blown off',
      'potted on the Tallow Bell, need some shade cloth over the Salt Harrier',
    ],
  },
  {
    name: '<plant> under shade cloth',
    kind: 'tend',
    head: 'under shade|shadecloth|shading cloth|netting|net?',
    shape: 'subject',
    care: 'shade',
    when: (p, f, t) => p[f - 1]?.is === 'plant' && f < 4 && endsAt(p, t),
    phrasings: ['Salt Harrier under shadecloth from today', 'Salt Harrier under shade netting'],
    mustNot: ['Salt Harrier still under shade cloth', 'Salt Harrier under shade look pale'],
  },
  {
    name: 'newspaper over <plant> against the glare',
    kind: 'tend',
    head: `${COVERINGS} over|on|across|round|around`,
    shape: 'object',
    care: 'shade',
    when: (p, _f, t) => closeBehind(p, t, 'place', 'plant') && againstSun(p, t),
    unless: (p, _f, t) => followsWord(p, t, ON_PAPER),
    phrasings: [
      'newspaper over the Salt Harrier against the glare',
      'put fleece over the Salt Harrier against the sun',
    ],
    mustNot: ['fleece on the list for the Salt Harrier against the sun'],
  },
  {
    name: '<place> got its shading',
    kind: 'tend',
    head: 'get~past|have~past .. shading|shadecloth',
    shape: 'subject',
    care: 'shade',
    when: (p, f) => precedes(p, f, 4, 'place'),
  },
  {
    name: 'put the shading up',
    kind: 'tend',
    phrasings: ['put the shade cloth up over the greenhouse'],
    unless: (p, _f, t) => followsWord(p, t, /^(?:list|order)$/),
    mustNot: ['put shade cloth on the shopping list'],
    head: 'put~|throw~past|chuck~past|sling~past|drape~past|stick~past|hang~past|pull~past|rig~past .. shading|shade|shadecloth|blinds cloth|netting|net|sail? up|over|on|down|across',
    shape: 'object',
    care: 'shade',
  },
  {
    name: 'hung up the shading',
    kind: 'tend',
    phrasings: [
      'hung up the shade cloth',
      'put up the shade netting in the greenhouse',
      'hanged up the shadow cloth',
    ],
    mustNot: ['hung up the shade catalogue', 'hung up my coat', 'put up a shade cloth display at the show'],
    head: 'put~|hang~past|rig~past|pull~past|get~past|drape~past|strung|drew|fixed up|over|across|down the|my|our|some|a|its? shading|shade|shadow|shadecloth|blinds|blind cloth|netting|net|sail?',
    shape: 'object',
    care: 'shade',
    unless: (p, _f, t) =>
      (/^(?:shade|shadow)$/.test(wordAt(p, t - 1)) &&
        /^\w/.test(wordAt(p, t)) &&
        !/^(?:in|over|on|for|at|and|today|again|because|as|so|this)$/.test(wordAt(p, t))) ||
      /^(?:display|order|list|catalogue|sample)$/.test(wordAt(p, t)),
  },
  bare('shade', 'shade'),
];

/** Covered: "fleeced the cold frame", "lid back on". */
import type { Piece } from '../../pieces/pieces.js';
import { closeBehind, follows, followsWord, type Rule, wordAt } from '../rule.js';
import { anyStock, isPutBy } from '../stock/kinds-of-plant.js';
import {
  againstSun,
  among,
  bare,
  COVERINGS,
  isOpenedOrLaid,
  isOtherCloth,
  ON_PAPER,
  opensPart,
  verb,
} from './telling.js';

const UNDER = 'fleece|cloche|cloches|dome|domes|cloth|bubblewrap|netting|hessian|polythene';

/** "The fleece on the cold frame wants replacing": how it is, and no care. */
const WORN =
  /^(?:cracked|broken|split|wants?|needs?|replacing|replaced|torn|tatty|filthy|ripped|leaking|slipped|blown|ragged|holed)$/;

/** "The snow flattened the netting over the cold frame": what befell it. */
function isHarmed(pieces: readonly Piece[], from: number): boolean {
  let at = from - 1;
  while (/^(?:the|a|some|my|old|new)$/.test(wordAt(pieces, at))) at--;
  return (
    at < from - 1 &&
    /^(?:flattened|ripped|tore|blew|lifted|burst|wrecked|shredded|snapped|smashed|broke)$/.test(
      wordAt(pieces, at),
    )
  );
}

export const covered: readonly Rule[] = [
  {
    name: 'fleece on <place>',
    kind: 'tend',
    head: 'fleece|covers|cover|dome|clingfilm|bubblewrap|wrap|netting|net|blanket|blankets|newspaper|newspapers|cloche|cloches|polythene|hessian|tarp|cloth|sheet|sheets is|are|was|gone|went? on|over|back|round|around|across',
    shape: 'object',
    care: 'cover',
    unless: (p, f, t) =>
      followsWord(p, t, ON_PAPER) ||
      isOtherCloth(p, f) ||
      followsWord(p, t, WORN) ||
      wordAt(p, t) === 'off' ||
      isHarmed(p, f) ||
      // "The fleece is on the bench": there it lies.
      (/^(?:is|are|was)$/.test(wordAt(p, f + 1)) &&
        wordAt(p, t - 1) === 'on' &&
        !closeBehind(p, t, 'plant')) ||
      (wordAt(p, t - 1) === 'on' && /^(?:standby|hand|order)$/.test(wordAt(p, t))) ||
      againstSun(p, t) ||
      (among(p, 0, f, 'cutting') && among(p, 0, f, 'count', 'pots') && among(p, 0, f, 'plant')),
    mustNot: [
      'fleece on my shopping list for the Salt Harrier',
      'the fleece on the cold frame wants replacing',
      'Salt Harrier outside, fleece on standby',
      'Salt Harrier, 6 tip cuttings, dipped in Clonex, dome on',
    ],
  },
  verb('cover fleece wrap tuck net tarp', 'cover', 'covered <place>', (p, f, t) =>
    (/^in$/.test(wordAt(p, t)) && !follows(p, t, 'plant', 'place')) ||
    // "Wrapped up warm and watered the greenhouse".
    (wordAt(p, t) === 'up' && /^(?:warm|well|and)$/.test(wordAt(p, t + 1))) ||
    // "Posted three to Doreen, well wrapped": for the journey.
    (wordAt(p, f) === 'wrapped' &&
      p
        .slice(0, f)
        .some((piece) => piece.is === 'word' && /^(?:post|send|mail)$/.test(piece.verb?.lemma ?? '')))
      ? true
      : // "Wrapped the tubers in newspaper": put by for the winter.
        (wordAt(p, f) === 'wrapped' && anyStock(p) && isPutBy(p)) ||
        (wordAt(p, f).startsWith('tuck') && !followsWord(p, t, /^(?:fleece|blanket|bubblewrap)$/)),
  ),
  {
    name: 'bagged up <plant>',
    kind: 'tend',
    head: 'bag~past up?',
    shape: 'object',
    care: 'cover',
    when: (p, _f, t) =>
      follows(p, t, 'plant') && followsWord(p, t, /^(?:humid|humidity|moist|moisture|damp)$/),
    phrasings: ['bagged up the Salt Harrier to keep them humid'],
    mustNot: ['bagged up 6 Salt Harrier for a customer'],
  },
  {
    name: 'put fleece over <place>',
    kind: 'tend',
    unless: (p, f, t) =>
      followsWord(p, t, ON_PAPER) ||
      isOtherCloth(p, t - 2) ||
      wordAt(p, t) === 'off' ||
      againstSun(p, t) ||
      (wordAt(p, t - 1) === 'on' &&
        among(p, f, t, 'pots') &&
        (among(p, f, t, 'plant') || among(p, t, t + 2, 'place') || /^(?:in|into)$/.test(wordAt(p, t - 3)))),
    mustNot: [
      'threw a cloth over the cage by the Salt Harrier',
      'struck ten Salt Harrier and put those in three tubs on the terrace',
      'put three pots on the windowsill',
      'stuck 3 Salt Harrier softwood cuttings in a pot on the porch',
    ],
    head: `put~|throw~past|chuck~past|toss~past|fling~past|spread|get~past|drape~past|lay~past|pop~past|sling~past|stick~past|pull~past|whack~past|bung~past|tuck~past|wrap~past .. ${COVERINGS}|<pots> over|on|across|back|round|around`,
    shape: 'object',
    care: 'cover',
  },
  {
    name: 'put a cloche over <plant>',
    kind: 'tend',
    head: 'put~|pop~past|stick~past|plonk~past|bung~past|place~past|get~past a|the|two|some <place> over|on|around|round',
    shape: 'object',
    care: 'cover',
    when: (p, _f, t) => isOpenedOrLaid(p[t - 2]),
    phrasings: ['popped a cloche over the Salt Harrier'],
    mustNot: ['popped a shelf over the Salt Harrier'],
  },
  {
    name: 'tucked <plant> under fleece',
    kind: 'tend',
    head: `put~|pop~past|tuck~past|set~past .. under|beneath a|an|the|some|its? bell|glass|frost|plastic|double? ${UNDER}|jar|<place>`,
    shape: 'object',
    care: 'cover',
    when: (p, f, t) => {
      const cover = p[t - 1];
      return (
        among(p, f, t, 'plant') &&
        !among(p, f, t, 'medium', 'cutting', 'pots') &&
        (cover?.is !== 'place' || /(?:cloches?|jars?|domes?)$/.test(cover.place))
      );
    },
    phrasings: ['tucked the Salt Harrier under a bell jar', 'put the Salt Harrier under frost cloth'],
    mustNot: ['tucked the Salt Harrier under the bench', 'put the Salt Harrier under the lights'],
  },
  {
    name: '<plant> under fleece tonight',
    kind: 'tend',
    head: `under ${UNDER}`,
    shape: 'subject',
    care: 'cover',
    when: (p, f, t) => p[f - 1]?.is === 'plant' && f < 4 && (p[t]?.is === 'when' || t >= p.length),
    phrasings: ['Salt Harrier under fleece tonight'],
    mustNot: ['Salt Harrier still under fleece', 'Salt Harrier under fleece are looking good'],
  },
  {
    name: 'poly bag over <plant>',
    kind: 'tend',
    head: 'poly|plastic|milk|clear|freezer|pop? bag|bags|polybag|jug|jugs|bottle|bottles|sack|sacks|glass over',
    shape: 'object',
    care: 'cover',
    when: (p, f, t) => opensPart(p, f) && closeBehind(p, t, 'plant', 'place') && wordAt(p, f - 1) !== 'the',
    unless: (p, _f, t) => followsWord(p, t, ON_PAPER) || followsWord(p, t, WORN),
    phrasings: [
      'poly bag over the Salt Harrier',
      'milk jugs over the Salt Harrier',
      'struck six Tallow Bell, poly bag over Salt Harrier',
    ],
    mustNot: ['fell and spilt the bag over the Salt Harrier'],
  },
  { name: 'lid back on', kind: 'tend', head: 'lid|lids back? on', shape: 'object', care: 'cover' },
  bare('cover', 'cover'),
];

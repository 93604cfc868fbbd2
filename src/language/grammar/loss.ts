/** Cuttings or plants that died or were thrown out. */
import type { Piece, PieceOf } from '../pieces.js';
import { closeBehind, endsAt, follows, followsWord, precedes, type Rule, wordAt } from './rule.js';

const needsPlantOrCount = (pieces: readonly Piece[], _from: number, to: number): boolean =>
  follows(pieces, to, 'plant', 'count');
const counted = (pieces: readonly Piece[], from: number, to: number): boolean =>
  precedes(pieces, from, 7, 'count') || closeBehind(pieces, to, 'count');
const PESTS =
  'slug|slugs|snail|snails|mice|mouse|squirrel|squirrels|pigeon|pigeons|rabbit|rabbits|caterpillar|caterpillars|rat|rats|weevil|weevils|aphids|greenfly|possum|possums|woodlice|deer|voles|earwigs|earwig|birds|bird|blackbirds|blackbird|hens|hen|chickens|chicken|cat|dog|puppy|kitten|goat|cows|wallaby|wallabies|rabbits|gnats|grubs|mites|chipmunk|chipmunks|groundhog|hare|hares|badger|badgers|fox|toddler|kids|grandson|magpies|magpie|mole|sciarid|sciarids|sciara|thrips|earwigs|cutworm|cutworms';

/** "Chucked them into the greenhouse", "threw six in with the lobelia": put there, not thrown away. */
function putSomewhere(pieces: readonly Piece[], from: number): boolean {
  if (
    pieces
      .slice(from)
      .some(
        (piece) =>
          piece.is === 'word' &&
          /^(?:gone|brown|slimy|mushy|rotten|rotted|dead|mouldy|black|still|sitting|left)$/.test(piece.text),
      )
  )
    return false;
  for (let at = from; at < pieces.length; at++) {
    const piece = pieces[at];
    if (!piece || piece.is === 'break') return false;
    if (piece.is === 'place' && /^(?:in|into|to|onto|on|under)$/.test(piece.prep ?? ''))
      return !/\b(?:bin|compost|heap|skip|tip|bonfire|rubbish|fire|dustbin)\b/.test(piece.place);
    if (/^in$/.test(wordAt(pieces, at)) && /^with$/.test(wordAt(pieces, at + 1))) return true;
    // "Chucked 30 in a tray of coarse sand".
    if (/^(?:in|into)$/.test(wordAt(pieces, at)) && follows(pieces, at + 1, 'pots', 'medium')) return true;
  }
  return false;
}

export const lossRules: readonly Rule[] = [
  {
    name: 'losses: <count> <plant>',
    kind: 'loss',
    head: 'losses|loss|deaths|casualties|scrap|waste|dump|dead|binned',
    shape: 'object',
    when: (p, f, t) =>
      f === 0 &&
      p[t]?.is === 'break' &&
      p.slice(t).some(({ is }) => is === 'plant') &&
      p.slice(t).some(({ is }) => is === 'count'),
  },
  {
    name: 'lost a cutting of <plant>',
    kind: 'loss',
    head: 'lose~past',
    when: (p, _f, t) => /^(?:a|another)$/.test(wordAt(p, t)) && /^(?:cutting|plant)$/.test(wordAt(p, t + 1)),
    shape: 'object',
  },
  {
    name: 'lost <count> <plant>',
    kind: 'loss',
    head: 'lose~past',
    shape: 'object',
    unless: (p, _f, t) =>
      (/^(?:track|count|interest|my|heart|patience|hope|a|sight|their|its|the)$/.test(wordAt(p, t)) &&
        !follows(p, t, 'plant', 'count')) ||
      /^(?:track|count|sight|interest|heart|patience)$/.test(wordAt(p, t)) ||
      /^(?:label|labels|leaves|leaf|tag|will)$/.test(wordAt(p, t + 1)),
  },
  { name: '<count> <plant> lost', kind: 'loss', head: 'be~ lost', shape: 'subject' },
  {
    name: '<count> <plant> lost',
    kind: 'loss',
    head: 'lost',
    shape: 'subject',
    when: (p, f, t) =>
      precedes(p, f, 6, 'count') &&
      (endsAt(p, t) || wordAt(p, t) === 'to') &&
      !/^(?:i|we|have|has|had)$/.test(wordAt(p, f - 1)),
  },
  {
    name: '<count> <plant> died',
    kind: 'loss',
    head: 'die~',
    shape: 'subject',
    unless: (p, _f, t) => /^(?:down|to|back|for)$/.test(wordAt(p, t)),
  },
  {
    name: '<count> <plant> dead',
    kind: 'loss',
    head: 'dead|goners|goner|deceased|kaput|toast|perished|brown?',
    shape: 'subject',
    when: (p, f) => wordAt(p, f) !== 'brown',
    unless: (p, _f, t) =>
      /^(?:chuffed|pleased|good|leaf|leaves|heads|head|on|easy|tired|line|end|proud|slow|excited)$/.test(
        wordAt(p, t),
      ),
  },
  {
    name: '<count> <plant> rotted',
    kind: 'loss',
    head: 'rot~past|rotten off|away|at?',
    shape: 'subject',
    cause: 'rot',
    unless: (p, _f, t) => /^(?:luck|weather|day|week|job|light|time|business|news|show)$/.test(wordAt(p, t)),
  },
  {
    name: '<count> <plant> rotting',
    kind: 'loss',
    head: 'rotting',
    shape: 'subject',
    cause: 'rot',
    unless: (p, f) => /^(?:to|with|of|from|by|like)$/.test(wordAt(p, f - 1)),
    when: (p, f) => precedes(p, f, 5, 'count') && !/^(?:is|are|be)$/.test(wordAt(p, f - 1)),
  },
  {
    name: '<count> gone to rot',
    kind: 'loss',
    head: 'go~|gone to? rot|rotten|mush|mushy|slime|slimy|squishy',
    shape: 'subject',
    cause: 'rot',
    when: (p, f) => precedes(p, f, 8, 'count', 'plant'),
  },
  {
    name: '<count> <plant> are mush',
    kind: 'loss',
    head: 'be~ mush|mushy|toast|goners|soup|slime',
    shape: 'subject',
    cause: 'rot',
    when: (p, f) => precedes(p, f, 5, 'count'),
    phrasings: ['5 Salt Harrier are mush'],
  },
  {
    name: '<count> <plant> trodden on',
    kind: 'loss',
    head: 'get~past|be~ trodden|stood|sat|stepped|trampled|trod on',
    shape: 'subject',
    cause: 'broken',
    when: counted,
    phrasings: ['one of the Salt Harrier got trodden on by the dog'],
  },
  {
    name: '<count> mould',
    kind: 'loss',
    head: 'mould|mouldy|botrytis',
    shape: 'subject',
    cause: 'mould',
    when: (p, f, t) => p[f - 1]?.is === 'count' && (!p[t] || p[t]?.is === 'break'),
    phrasings: ['Salt Harrier: 6 rooted, 2 mould'],
  },
  {
    name: 'rip <count> <plant>',
    kind: 'loss',
    head: 'rip',
    shape: 'object',
    when: (p, f, t) => f === 0 && closeBehind(p, t, 'plant', 'count'),
  },
  {
    name: '<count> turned to mush',
    kind: 'loss',
    head: 'turn~|turned to|black|in? mush|mushy|slime|soup|black',
    shape: 'subject',
    cause: 'rot',
    when: counted,
  },
  {
    name: '<count> went soft and black',
    kind: 'loss',
    head: 'go~past|gone|turned soft|soggy|black|slimy|squishy|mushy|manky',
    shape: 'subject',
    cause: 'rot',
    when: (p, f) => precedes(p, f, 7, 'count'),
  },
  {
    name: '<count> gone mouldy',
    kind: 'loss',
    head: 'go~|gone to|all|right? grey|gray? mouldy|furry|fuzzy|mould|botrytis',
    shape: 'subject',
    cause: 'mould',
    when: (p, f) => precedes(p, f, 7, 'count') || followsWord(p, f, /^(?:bin|binned|heap|thrown|chucked)$/),
  },
  {
    name: '<count> damped off',
    kind: 'loss',
    head: 'damp~|damping off|of',
    shape: 'subject',
    cause: 'dampingOff',
    unless: (p, f) => /^(?:to|with|of|from|by|like)$/.test(wordAt(p, f - 1)),
  },
  {
    name: '<count> <plant> keeled over',
    kind: 'loss',
    head: 'keel~|tip~past|curl~past|give~past over|up',
    shape: 'subject',
    when: (p, f) =>
      /^keel/.test(wordAt(p, f)) ||
      (precedes(p, f, 5, 'count') && /^(?:curled|gave|given)/.test(wordAt(p, f))),
  },
  {
    name: '<count> perished',
    kind: 'loss',
    head: 'perish~|croak~|collapse~past|shrivel~past|wither~past|succumb~|fail~past|frazzle~past|fry~past|drown~past|wilt~past|cook~past|scorch~past|bake~past|expire~past|conk~past|flop~past|crisp~past',
    shape: 'subject',
    when: (p, f, t) =>
      counted(p, f, t) &&
      // "All flopped this evening": thirsty, not dead.
      !(
        /^flop/.test(wordAt(p, f)) &&
        p.slice(0, f).some((piece) => piece.is === 'count' && piece.quantity.whole === 'all')
      ),
    unless: (p, f, t) =>
      /^to$/.test(wordAt(p, t)) &&
      !/^succumb/.test(wordAt(p, f)) &&
      !/^(?:rot|botrytis|mould|frost|the|slugs|black|blackleg)$/.test(wordAt(p, t + 1)),
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
  { name: '<count> kicked the bucket', kind: 'loss', head: 'kicked|kick the bucket', shape: 'subject' },
  { name: '<count> snuffed it', kind: 'loss', head: 'snuff~|pegged|cark~ it|out', shape: 'subject' },
  { name: '<count> gave up the ghost', kind: 'loss', head: 'give~ up the ghost', shape: 'subject' },
  {
    name: '<count> gave up',
    kind: 'loss',
    head: 'give~past up|in',
    shape: 'subject',
    when: (p, f, t) => precedes(p, f, 5, 'count') && endsAt(p, t),
  },
  {
    name: 'the frost took <count> <plant> with it',
    kind: 'loss',
    head: 'take~past <count> .. with it|them',
    shape: 'object',
    cause: 'frost',
    when: (p, f) =>
      p
        .slice(0, f)
        .some(
          (piece) =>
            (piece.is === 'celsius' && piece.celsius < 3) ||
            (piece.is === 'word' && /^(?:frost|cold|freeze)$/.test(piece.text)),
        ),
    phrasings: ['hard frost last night, took 2 of the Salt Harrier with it'],
    mustNot: ['took 2 of the Salt Harrier with me'],
  },
  {
    name: 'there was frost and it took <count> <plant>',
    kind: 'loss',
    head: 'it take~past|have~past|get~past <count>',
    shape: 'object',
    when: (p, f) =>
      p
        .slice(0, f)
        .some(
          (piece) =>
            (piece.is === 'celsius' && piece.celsius < 3) ||
            (piece.is === 'word' &&
              /^(?:frost|cold|freeze|rot|botrytis|mould|heat|slug|fox|cat)$/.test(piece.text)),
        ),
    phrasings: ['there was a frost and it took two of the Salt Harrier'],
    mustNot: ['it took two hours to pot the Salt Harrier'],
  },
  {
    name: 'took <count> <plant> with it',
    kind: 'loss',
    head: 'take~past <count> .. with it',
    shape: 'object',
    when: (p, f, t) => endsAt(p, t) && p.slice(f, t).some(({ is }) => is === 'plant'),
    mustNot: ['took 2 of the Salt Harrier, with it being so warm'],
  },
  { name: '<count> turned up their toes', kind: 'loss', head: 'turn~past up their toes', shape: 'subject' },
  { name: '<count> popped their clogs', kind: 'loss', head: 'popped .. clogs', shape: 'subject' },
  {
    name: "<count> didn't make it",
    phrasings: ["five Salt Harrier didn't make it"],
    kind: 'loss',
    head: "didn't|not|never|hasn't|haven't make~ it",
    shape: 'subject',
  },
  {
    name: "<count> didn't survive",
    phrasings: ['two of the Salt Harrier did not survive'],
    kind: 'loss',
    head: "didn't|not|never survive|survived",
    shape: 'subject',
  },
  {
    name: 'down <count> <plant>',
    kind: 'loss',
    head: 'down <count>',
    shape: 'object',
    when: (p, f, t) =>
      (f === 0 || p[f - 1]?.is === 'break' || /^(?:i'm|we're|am|are)$/.test(wordAt(p, f - 1))) &&
      closeBehind(p, t, 'plant'),
    phrasings: ['down two Salt Harrier to damping off'],
  },
  {
    name: '<count> <plant> short',
    kind: 'loss',
    head: 'short|down|light',
    shape: 'subject',
    when: (p, f) =>
      /^(?:i'm|im|we're|am|are)$/.test(wordAt(p, 0)) &&
      precedes(p, f, 3, 'count') &&
      precedes(p, f, 3, 'plant'),
    phrasings: ["I'm two Salt Harrier short after the slugs"],
  },
  {
    name: 'rot on <plant>, pulled out <count>',
    kind: 'loss',
    head: 'pull~past|whip~past|fished|hoick~past|pick~past|take~past out <count>',
    shape: 'object',
    when: (p, f) =>
      p
        .slice(0, f)
        .some(
          (piece) =>
            piece.is === 'word' && /^(?:rot|botrytis|mould|mold|mildew|blackleg|mush)$/.test(piece.text),
        ),
    phrasings: ['botrytis on the Salt Harrier, pulled out five'],
    mustNot: ['pulled out five Salt Harrier to look at the roots'],
  },
  {
    name: 'none of <plant> survived',
    kind: 'loss',
    head: 'survive~past|make~past|pull~past|come~past|live~past it|through?',
    shape: 'subject',
    count: 'all',
    when: (p, f, t) =>
      (t > f + 1 || /^(?:survived|lived)$/.test(wordAt(p, f))) &&
      p
        .slice(Math.max(0, f - 6), f)
        .some((piece) => piece.is === 'count' && piece.quantity.value === 0 && !piece.quantity.vague),
    phrasings: ['none of the Salt Harrier survived', 'not one of the Salt Harrier made it'],
    mustNot: ['ten of the Salt Harrier survived', 'none of the Salt Harrier have roots'],
  },
  {
    name: '<count> <plant> ruined',
    kind: 'loss',
    head: 'ruined|wrecked|squashed|smashed|trashed',
    shape: 'subject',
    when: (p, f, t) => precedes(p, f, 4, 'count') && endsAt(p, t),
    phrasings: ['dropped the tray, five Salt Harrier ruined'],
  },
  {
    name: 'weeded out <count> <plant>',
    kind: 'loss',
    head: 'weeded|rogued|sorted|picked out',
    shape: 'object',
    when: (p, _f, t) =>
      closeBehind(p, t, 'count') && followsWord(p, t, /^(?:worst|weakest|duds?|dead|rotten|sickly)$/),
    phrasings: ['weeded out the four worst Salt Harrier'],
  },
  {
    name: '<count> <plant> gone the same way',
    kind: 'loss',
    head: 'gone|went the same way',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 4, 'count', 'plant'),
    phrasings: ['another Salt Harrier gone the same way'],
  },
  {
    name: '<count> <plant> never rooted, so out they went',
    kind: 'loss',
    head: 'out they|it went|go',
    shape: 'subject',
    when: (p, f, t) =>
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      p.slice(0, f).some(({ is }) => is === 'count') &&
      !/^(?:to|into|in|on|along|by)$/.test(wordAt(p, t)),
    phrasings: ['six of the Salt Harrier never rooted so out they went'],
    mustNot: ['six Salt Harrier hardened, out they went to the border'],
  },
  {
    name: '<count> no good',
    kind: 'loss',
    head: 'no good|use',
    shape: 'subject',
    when: (p, f) => p[f - 1]?.is === 'count' && followsWord(p, f + 3, /^(?:binned|chucked|out|dumped)$/),
    phrasings: ['Salt Harrier: 9 good, 3 no good, binned those'],
    mustNot: ['3 no good at labelling the Salt Harrier'],
  },
  {
    name: '<count> were duds',
    kind: 'loss',
    head: 'be~past duds|useless|goners|hopeless',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 4, 'count'),
    phrasings: ['potted up 20 Salt Harrier into 9cm, 2 were duds'],
    mustNot: ['the Salt Harrier were hopeless to label'],
  },
  { name: '<count> bit the dust', kind: 'loss', head: 'bit|bitten the dust', shape: 'subject' },
  { name: '<count> carked it', kind: 'loss', head: 'carked|karked|croaked|copped it', shape: 'subject' },
  {
    name: '<count> down',
    phrasings: ['sciarid got into SH1, 3 down'],
    kind: 'loss',
    head: 'down',
    shape: 'subject',
    faint: true,
    when: (p, f, t) =>
      p[f - 1]?.is === 'count' &&
      (!p[t] || p[t]?.is === 'break') &&
      p.some(({ is }) => is === 'plant') &&
      f > 1,
    mustNot: ['put the Salt Harrier down'],
  },
  {
    name: '<count> gone',
    kind: 'loss',
    head: 'gone|out|snuffed|kaput|caput',
    shape: 'subject',
    faint: true,
    when: (p, f, t) =>
      precedes(p, f, 4, 'count') &&
      (endsAt(p, t) || /^(?:at|with|on)$/.test(wordAt(p, t))) &&
      (p[t]?.is !== 'when' ||
        /^(?:today|yesterday|this|last)\b/i.test((p[t] as PieceOf<'when'>).when.words)) &&
      !p
        .slice(0, f)
        .some(
          (piece) =>
            piece.is === 'word' &&
            (piece.verb !== undefined || /^tips$/.test(piece.text)) &&
            !/^(?:have|has|are|is)$/.test(piece.text),
        ) &&
      !p.slice(t).some((piece) => piece.is === 'place'),
  },
  {
    name: '<count> eaten by <pest>',
    kind: 'loss',
    head: 'eat~|munched|scoffed|devoured|nibbled|chomped|eaten|demolished|destroyed|trampled|wrecked by',
    shape: 'subject',
    cause: 'pest',
  },
  {
    name: '<count> eaten',
    kind: 'loss',
    head: 'eaten|munched|devoured|scoffed|nibbled',
    shape: 'subject',
    cause: 'pest',
    when: (p, f) => precedes(p, f, 6, 'count'),
  },
  {
    name: '<pest> had <count> <plant>',
    kind: 'loss',
    head: `${PESTS} have~past|get~past|eat~past|take~past|kill~past|munch~past|scoff~past|demolish~past|destroy~past|chomp~past|devour~past|finish~past|nibble~past|do~past|dig~past|break~past|snap~past|knock~past|flatten~past|wreck~past|pull~past|polish~past|trample~past|wipe~past|clear~past|squash~past|ate|ruined|mowed|sat|dug up|off|through|over|for?`,
    shape: 'object',
    cause: 'pest',
    when: needsPlantOrCount,
  },
  {
    name: '<pest> have had <count> <plant>',
    kind: 'loss',
    head: `${PESTS} have~ have~past|get~past|eat~past|take~past|munched|scoffed|destroyed|devoured|eaten|finished|been`,
    shape: 'object',
    cause: 'pest',
    when: needsPlantOrCount,
  },
  {
    name: '<pest> has had <count> <plant>',
    kind: 'loss',
    head: `${PESTS.replace(/(\w)(?=\||$)/g, "$1's")} had|got|taken|munched|scoffed|destroyed|devoured|eaten|finished|been`,
    shape: 'object',
    cause: 'pest',
    when: needsPlantOrCount,
    phrasings: ["a slug's had one of the Salt Harrier, the swine"],
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
    name: 'rot got <count> <plant>',
    kind: 'loss',
    head: 'rot|blackleg have~|get~|take~|kill~|claim~|do~',
    shape: 'object',
    cause: 'rot',
    when: needsPlantOrCount,
  },
  {
    name: 'botrytis got <count> <plant>',
    kind: 'loss',
    head: 'botrytis|mould|mildew have~|get~|take~|kill~|claim~|do~',
    shape: 'object',
    cause: 'mould',
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
  {
    name: 'binned <count> <plant>',
    kind: 'loss',
    head: 'bin~past|pitch~past|chuck~past|throw~past|compost~past|toss~past|dump~past|scrap~past|discard~past|ditch~past|cull~past|destroy~past|turf~past|heave~past|biff~past out|away|off?',
    shape: 'object',
    unless: (p, _f, t) =>
      followsWord(p, t, /^(?:fleece|lid|cover|sheet|party|towel|over)$/) ||
      /^(?:label|labels)$/.test(wordAt(p, t + 1)) ||
      putSomewhere(p, t),
    phrasings: [
      'chucked a dozen Salt Harrier on the heap',
      'binned the last two Salt Harrier still sitting in the propagator',
    ],
    mustNot: [
      'chucked a dozen Salt Harrier into the greenhouse',
      'threw six Tallow Bell in with the lobelia',
    ],
  },
  {
    name: '<count> in the bin',
    kind: 'loss',
    head: 'in|on|to|into the bin|compost|heap|tip|skip|dustbin',
    shape: 'subject',
    when: (p, f, t) =>
      (precedes(p, f, 8, 'count', 'plant') || precedes(p, f, 4, 'word')) &&
      !p
        .slice(0, f)
        .some(
          (piece) =>
            piece.is === 'word' &&
            /^(?:chucked|binned|threw|thrown|lost|tossed|chuck|dumped|dead|died|rotted)$/.test(piece.text),
        ) &&
      t > 0,
  },
  {
    name: 'killed <count> <plant>',
    kind: 'loss',
    head: 'kill~past|murder~past|finish~past',
    shape: 'object',
    when: (p, f, t) => closeBehind(p, t, 'plant', 'count') && !/^finish/.test(wordAt(p, f)),
  },
  {
    name: 'let <count> <plant> die',
    kind: 'loss',
    head: 'let~|leave~past .. dry|die|rot|freeze|wilt|shrivel|cook|fry',
    shape: 'object',
  },
  {
    name: 'snapped <count> <plant>',
    kind: 'loss',
    head: 'snap~past|break~past|squash~past|crush~past|smash~past|trample~past|behead~past',
    shape: 'object',
    cause: 'broken',
    unless: (p, f, t) => p[f - 1]?.is === 'count' && /^(?:so|and|but)$/.test(wordAt(p, t)),
    when: (p, f, t) =>
      counted(p, f, t) ||
      /^it$/.test(wordAt(p, f - 1)) ||
      (closeBehind(p, t, 'plant') && /^(?:a|an)$/.test(wordAt(p, t))),
  },
  {
    name: 'knocked <count> <plant> over',
    kind: 'loss',
    head: 'knock~past over|off|down?',
    shape: 'object',
    cause: 'broken',
    when: (p, f, t) =>
      (closeBehind(p, t, 'count') || (/^(?:a|an|another)$/.test(wordAt(p, t)) && p[t + 1]?.is === 'plant')) &&
      // "Knocked three over and snapped two": what it came to.
      !p
        .slice(t)
        .some(
          (piece, n) =>
            piece.is === 'word' && /^(?:snapped|broke)$/.test(piece.text) && p[t + n + 1]?.is === 'count',
        ) &&
      (/^(?:over|off|down)$/.test(wordAt(p, t - 1)) || followsWord(p, t, /^(?:over|off|down|flying)$/)) &&
      f >= 0,
    mustNot: ['knocked on 12 Plum Gaiters to 1 litre'],
  },
  {
    name: '<count> <plant> knocked over',
    kind: 'loss',
    head: 'knock~past over|off|down',
    shape: 'subject',
    cause: 'broken',
    when: (p, f) =>
      precedes(p, f, 5, 'count') &&
      !p.slice(0, f).some((piece) => piece.is === 'word' && /^(?:i|wind|we)$/.test(piece.text)),
  },
  {
    name: 'dropped <plant> and it broke',
    kind: 'loss',
    head: 'drop~past .. broke|snapped|smashed|broken|died',
    shape: 'object',
    cause: 'broken',
  },
  {
    name: '<count> broke',
    kind: 'loss',
    head: 'break~past|snap~past',
    shape: 'subject',
    cause: 'broken',
    when: (p, f, t) => p[f - 1]?.is === 'count' && /^(?:so|and|but)$/.test(wordAt(p, t)),
    phrasings: ['took 10 Salt Harrier, 2 broke so 8 in'],
  },
  {
    name: 'kept <count> <plant>',
    kind: 'aside',
    head: 'keep~past',
    shape: 'object',
    when: (p, _f, t) => closeBehind(p, t, 'count', 'plant'),
  },
];

/** Cuttings taken and inserted. */
import type { Piece } from '../pieces.js';
import { CUTTINGS, leavesWith } from './taken-away.js';
import { cameAndTook, isSomeones } from './dispatch.js';
import { closeBehind, endsAt, follows, followsWord, precedes, type Rule, wordAt } from './rule.js';

/** "Took" is a strike only with something taken from a plant behind it. */
function takesSomethingElse(pieces: readonly Piece[], from: number, to: number): boolean {
  if (isRelative(pieces, from)) return true;
  // "Took 12 days", "took me 2 hours".
  const lasting = /^(?:me|us|about)$/.test(wordAt(pieces, to)) ? to + 1 : to;
  const span = pieces[lasting];
  if (
    (span?.is === 'count' &&
      /^(?:hours?|days?|weeks?|minutes?|mins|months?)$/.test(wordAt(pieces, lasting + 1))) ||
    (span?.is === 'when' &&
      /^(?:\d+|[a-z]+) (?:hours?|days?|weeks?|minutes?|months?)$/i.test(span.when.words))
  )
    return true;
  // "A frost, and it took two".
  if (wordAt(pieces, from - 1) === 'it') return true;
  // "Took the Salt Harrier out of the hot press": carried.
  if (
    closeBehind(pieces, to, 'plant') &&
    !closeBehind(pieces, to, 'count') &&
    pieces.some((piece) => piece.is === 'place' && piece.prep === 'from') &&
    followsWord(pieces, to, /^out$/)
  )
    return true;
  // "Took the cuttings out of the propagator".
  if (
    /^(?:the|my|all|those)$/.test(wordAt(pieces, to)) &&
    CUTTINGS.test(wordAt(pieces, to + 1)) &&
    wordAt(pieces, to + 2) === 'out'
  )
    return true;
  // "Took the row cover off the hoop house".
  if (
    followsWord(pieces, to, /^(?:cover|covers|lid|lids|fleece|shading|shade|netting|dome|domes|cloche)$/) &&
    followsWord(pieces, to, /^off$/)
  )
    return true;
  const next = wordAt(pieces, to);
  // "Took three Salt Harrier to Nell".
  if (leavesWith(pieces, to)) return true;
  // "Took over twenty": more than that.
  if (next === 'over' && pieces[to + 1]?.is === 'count') return false;
  if (
    /^(?:out|off|away|delivery|photos?|pictures?|ages|stock|advice|care|time|notes?|part|place|over|down|it|him|her|home|apart|forever|long|root|roots|ill|pity|hours|days|weeks)$/.test(
      next,
    )
  )
    return true;
  if (
    /^(?:the|a|my|their|some)$/.test(next) &&
    /^(?:lid|lids|cover|covers|fleece|tops|day|temperature|train|bus|car|dog|kids|children|photo|photos|pictures|picture|plunge|tips|heads|head|hint|morning|afternoon|opportunity|liberty|top|bag|bags|cloche|domes?|week|weekend|rest|lot)$/.test(
      wordAt(pieces, to + 1),
    )
  )
    return true;
  if (/^(?:them|em|those|these|it|they)$/.test(next)) return !followsWord(pieces, to, /^(?:from|with)$/);
  if (
    follows(pieces, to, 'plant') &&
    followsWord(pieces, to, /^to$/) &&
    !follows(pieces, to, 'cutting') &&
    !followsWord(pieces, to, CUTTINGS) &&
    follows(pieces, to, 'place')
  )
    return true;
  return !follows(pieces, to, 'plant', 'count', 'cutting') && !followsWord(pieces, to, CUTTINGS);
}

/** "The ones I took on 5 March", "the Salt Harrier struck in April": the words tell which, nothing new was struck. */
function isRelative(pieces: readonly Piece[], from: number): boolean {
  if (tellsWhichLot(pieces, from)) return true;
  let at = from - 1;
  while (/^(?:have|had|just|only|last|first|did|all)$/.test(wordAt(pieces, at))) at--;
  if (!/^(?:i|we)$/.test(wordAt(pieces, at))) return false;
  const before = wordAt(pieces, at - 1);
  return (
    /^(?:ones|those|that|which|lot|batch|plants|one|what)$/.test(before) ||
    (pieces[at - 1]?.is === 'plant' && at > 1 && !/^of$/.test(wordAt(pieces, at - 2))) ||
    (/^cuttings$/.test(before) && wordAt(pieces, at - 2) !== '')
  );
}

/** A day behind plants that have an article, beside something done to them. */
function tellsWhichLot(pieces: readonly Piece[], from: number): boolean {
  const named = pieces[from - 1];
  const isNamed =
    named?.is === 'plant' || /^(?:ones|those|lot|batch|cuttings)$/.test(wordAt(pieces, from - 1));
  const article = named?.is === 'word' && named.text === 'those' ? from - 1 : from - 2;
  return (
    isNamed &&
    pieces[from + 1]?.is === 'when' &&
    /^(?:the|those|these|my|of)$/.test(wordAt(pieces, article)) &&
    pieces.some(
      (piece, at) =>
        at !== from &&
        piece.is === 'word' &&
        (piece.verb?.form === 'past' || piece.text === 'roots') &&
        !/^(?:be|have|take|strike|stick)$/.test(piece.verb?.lemma ?? ''),
    )
  );
}

const mentionsCuttings = (pieces: readonly Piece[], _from: number, to: number): boolean =>
  followsWord(pieces, to, CUTTINGS) || follows(pieces, to, 'cutting');

const spoken = (pieces: readonly Piece[], from: number, to: number): boolean =>
  (mentionsCuttings(pieces, from, to) ||
    pieces.slice(to).some((piece) => piece.is === 'word' && /^(?:hormone|clonex)$/.test(piece.text))) &&
  follows(pieces, to, 'count', 'plant') &&
  !isRelative(pieces, from);

const told =
  /^(?:need|needs|want|wants|look|looks|looking|are|is|going|gone|getting|from|should|still|doing|seem|got|have|has|rooted|later|where|which|that|if|for|will|would|my|these|those|your|how|took)$/;

/** "Cuttings from the streptocarpus": off a plant, not out of somebody's hands. */
const fromAPlant = (pieces: readonly Piece[], at: number): boolean =>
  pieces[at + 1]?.is === 'plant' ||
  (/^(?:the|a|my|an|our)$/.test(wordAt(pieces, at + 1)) && pieces[at + 2]?.is === 'plant') ||
  pieces.slice(at).some((piece) => piece.is === 'word' && /^(?:prunings|trimmings|stock)$/.test(piece.text));

/** Telegraphic: "14 box cuttings, nodal" and nothing that says otherwise. */
const bareCuttings = (pieces: readonly Piece[], from: number, _to: number): boolean => {
  if (!pieces.some(({ is }) => is === 'plant')) return false;
  if (!pieces.some(({ is }) => is === 'count' || is === 'pots')) return false;
  // "Got started at last, 14 basals …": talk before the first break.
  const first = pieces.findIndex(({ is }) => is === 'plant' || is === 'count' || is === 'pots');
  const opening = pieces.slice(0, first).findLastIndex(({ is }) => is === 'break') + 1;
  return !pieces.some(
    (piece, at) =>
      piece.is === 'word' &&
      ((told.test(piece.text) &&
        !(piece.text === 'from' && fromAPlant(pieces, at)) &&
        !(piece.text === 'got' && /^(?:round|around|started|going)$/.test(wordAt(pieces, at + 1)))) ||
        (piece.verb !== undefined &&
          at >= opening &&
          wordAt(pieces, at + 1) !== 'count' &&
          wordAt(pieces, at + 1) !== 'round' &&
          at !== from &&
          !/^(?:heel|root|rooting|water|compost|place|tip|stem|leaf|pot|bed|cut|cutting|cuttings|shade)$/.test(
            piece.text,
          ) &&
          !/^(?:push|put|go|do|tuck|pop|dip|stick|lay|dust|line|insert|space)$/.test(piece.verb.lemma))),
  );
};

const allSlots = (pieces: readonly Piece[]): boolean =>
  pieces.every(
    (piece) =>
      piece.is !== 'word' ||
      /^(?:of|the|in|on|with|each|a|all|at|from|my|new|more|into|under|and|cuttings|cutting|done|per|to|today|it|them|before|tea|lunch|every|one|x|together|mixed|sharing|same|fleece|glass|lid|cover|fog|mist)$/.test(
        piece.text,
      ),
  );

/** More plants than containers: rooted ones would have a pot each. */
const sharesPot = (pieces: readonly Piece[]): boolean =>
  pieces.some(
    (piece) =>
      piece.is === 'pots' &&
      pieces.some((each) => each.is === 'count' && (each.quantity.value ?? 0) > (piece.pots ?? Infinity)),
  );

/** "Doreen took two for her mother": somebody else carried plants away. */
function forTheirOwn(pieces: readonly Piece[], from: number, to: number): boolean {
  const who = wordAt(pieces, from - 1);
  return (
    who !== '' &&
    !/^(?:i|we|i've|we've|have|and|then|also|just|today)$/.test(who) &&
    pieces
      .slice(to)
      .some(
        (_, n) => wordAt(pieces, to + n) === 'for' && /^(?:his|her|their)$/.test(wordAt(pieces, to + n + 1)),
      )
  );
}

export const strikeRules: readonly Rule[] = [
  {
    name: 'filled a tray with <plant>',
    kind: 'strike',
    head: 'fill~past .. with|of',
    shape: 'object',
    when: (p, f, t) =>
      closeBehind(p, t, 'plant', 'count', 'cutting') &&
      p.slice(f, t).some(({ is }) => is === 'pots' || is === 'size'),
  },
  {
    name: 'let me snip <count> off <plant>',
    kind: 'strike',
    head: 'let~ me|us snip~|take~|cut~|have|nick~|pinch~',
    shape: 'object',
    when: (p, _f, t) =>
      follows(p, t, 'plant', 'count') && (followsWord(p, t, CUTTINGS) || followsWord(p, t, /^(?:off|from)$/)),
  },
  {
    name: 'took <count> cuttings of <plant>',
    kind: 'strike',
    head: 'take~past',
    shape: 'object',
    unless: (p, f, t) =>
      takesSomethingElse(p, f, t) ||
      ((isSomeones(wordAt(p, f - 1)) || cameAndTook(p, f)) && !followsWord(p, t, CUTTINGS)) ||
      (endsAt(p, t) && precedes(p, f, 6, 'plant', 'count')) ||
      forTheirOwn(p, f, t) ||
      /^(?:be|been|got)$/.test(wordAt(p, f - 1)),
    mustNot: ['Doreen took two of the Salt Harrier for her mother'],
  },
  {
    name: '<count> <plant> taken',
    kind: 'strike',
    head: 'taken|took',
    shape: 'subject',
    when: (p, f, t) =>
      (precedes(p, f, 8, 'plant', 'count') ||
        (p.slice(0, f).some(({ is }) => is === 'plant') &&
          p.slice(0, f).some(({ is }) => is === 'count') &&
          !p.slice(0, f).some((piece) => piece.is === 'word' && piece.verb !== undefined))) &&
      (endsAt(p, t) || p[t]?.is === 'place' || /^(?:from|in|into|with|as|at)$/.test(wordAt(p, t))) &&
      !/^(?:i|we)$/.test(wordAt(p, f - 1)) &&
      !/^(?:have|has)$/.test(wordAt(p, f - 1)) &&
      !/^(?:what|how|which)$/.test(wordAt(p, 0)),
  },
  {
    name: 'take <count> cuttings of <plant>',
    kind: 'strike',
    head: 'take~base',
    shape: 'object',
    unless: takesSomethingElse,
  },
  {
    name: 'taking <count> cuttings of <plant>',
    kind: 'strike',
    head: 'take~ing',
    shape: 'object',
    unless: takesSomethingElse,
  },
  {
    name: 'struck <count> <plant>',
    kind: 'strike',
    head: 'strike~',
    shape: 'object',
    unless: (p, f, t) => isRelative(p, f) || /^(?:rate|root|roots)$/.test(wordAt(p, t)),
  },
  {
    name: 'stuck <count> <plant>',
    kind: 'strike',
    head: 'stick~past',
    shape: 'object',
    unless: (p, f, t) =>
      isRelative(p, f) ||
      (/^(?:them|it|em|the|inside|indoors|at|with|to|together|on|like)$/.test(wordAt(p, t)) &&
        !follows(p, t, 'count', 'cutting') &&
        !/^(?:prunings|trimmings|clippings|bits|pieces)$/.test(wordAt(p, t + 1))),
    phrasings: ['stuck the prunings of the Salt Harrier in a jar of water, six of em'],
  },
  {
    name: 'inserted <count> <plant>',
    kind: 'strike',
    head: 'insert~past|propagate~past|slip~past|clip~past|snip~past|layer~past|dibble~past|dib~past in?',
    shape: 'object',
    when: (p, f, t) => follows(p, t, 'plant', 'count') || precedes(p, f, 6, 'plant'),
  },
  {
    name: 'sticking <count> <plant>',
    kind: 'strike',
    head: 'strike~ing|stick~ing|inserting',
    shape: 'object',
    when: (p, _f, t) => follows(p, t, 'count') && follows(p, t, 'plant'),
  },
  {
    name: 'cut <count> <plant>',
    kind: 'strike',
    head: 'cut~past|cut~base',
    shape: 'object',
    when: (p, f, t) =>
      !isRelative(p, f) &&
      !/^(?:back|down|off|the|it|them)$/.test(wordAt(p, t)) &&
      (mentionsCuttings(p, f, t) || (closeBehind(p, t, 'count') && follows(p, t, 'plant'))),
  },
  {
    name: 'did <count> cuttings of <plant>',
    kind: 'strike',
    head: 'do~past',
    shape: 'object',
    when: (p, f, t) =>
      spoken(p, f, t) ||
      (p[t]?.is === 'count' &&
        closeBehind(p, t, 'plant') &&
        (p.slice(t).some(({ is }) => is === 'pots' || is === 'cutting') ||
          p.length < t + 5 ||
          followsWord(p, t, /^(?:tubers?|stools?|crowns?|stock)$/)) &&
        !followsWord(p, t, /^to$/)),
  },
  {
    name: 'made <count> cuttings of <plant>',
    kind: 'strike',
    head: 'make~past|prepare~past|prep~past|harvest~past',
    shape: 'object',
    when: spoken,
    unless: (p, _f, t) => /^(?:roots|root|new|some)$/.test(wordAt(p, t)),
    mustNot: ['the Salt Harrier have made roots by six pieces'],
  },
  {
    name: 'snipped <count> cuttings off <plant>',
    kind: 'strike',
    head: 'nick~past|start~past|get~past|grab~past|pop~past|bung~past|push~past|dib~past|dibble~past|set~past|place~past|steal~past|pinch~past|fill~past|do~past|cadge~past|liberate~past|root~past|have~past|try~past|put~|tuck~past|shove~past|plonk~past|lift~past|chop~past',
    shape: 'object',
    when: spoken,
    unless: (p, _f, t) =>
      /^(?:rid|the|on|home|to)$/.test(wordAt(p, t)) ||
      (/^rooted$/.test(wordAt(p, t - 1)) && /^cuttings?$/.test(wordAt(p, t))) ||
      followsWord(p, t, /^(?:died|rotted|rooted|dead|compost(?:ed)?|bin)$/),
  },
  {
    name: 'started <pots> of <plant> off',
    kind: 'strike',
    head: 'start~past off?',
    shape: 'object',
    when: (p, _f, t) =>
      follows(p, t, 'plant') &&
      (follows(p, t, 'pots') || (p[t]?.is === 'count' && followsWord(p, t, /^off$/))) &&
      !followsWord(p, t, /^(?:tubers?|crowns?|seeds?)$/),
    phrasings: ['started 10 Salt Harrier off, tips, in a half tray'],
  },
  {
    name: '<count> more <plant> on the go',
    kind: 'strike',
    head: 'on the go|way',
    shape: 'subject',
    when: (p, f) => {
      const count = p.slice(Math.max(0, f - 4), f).find(({ is }) => is === 'count');
      return count?.is === 'count' && count.quantity.more === true && precedes(p, f, 4, 'plant');
    },
    phrasings: ['8 more Salt Harrier on the go in the propagator'],
    mustNot: ['8 Salt Harrier on the way to the show'],
  },
  {
    name: 'put <count> <plant> in <medium>',
    kind: 'strike',
    head: 'put~|start~past|pop~past|stick~past|bung~past|place~past|chuck~past|throw~past|sling~past|whack~past|shove~past|set~past|root~past|dunk~past|plonk~past .. in|into <pots>? of? <medium>',
    shape: 'object',
    when: (p, f, t) =>
      (p.slice(f, t).some(({ is }) => is === 'count' || is === 'cutting') ||
        p.slice(f, t).some((piece) => piece.is === 'word' && CUTTINGS.test(piece.text))) &&
      !p.slice(f, t).some(({ is }) => is === 'size'),
  },
  {
    name: 'put <count> <plant> in to root',
    kind: 'strike',
    head: 'put~|pop~past|set~past|stick~past|start~past|tuck~past .. to root|strike',
    shape: 'object',
    when: (p, f, t) =>
      p.slice(f, t).some(({ is }) => is === 'count') &&
      p.slice(f, t).some(({ is }) => is === 'plant') &&
      !followsWord(p, t, /^(?:out|through|well)$/),
    phrasings: ["I've just put 7 Salt Harrier in to root"],
    mustNot: ['put the Salt Harrier in the propagator to root'],
  },
  {
    name: '<plant> gave <count> shoots, all in',
    kind: 'strike',
    head: 'give~past|yield~past|produce~past me|us? <count>',
    shape: 'subject',
    when: (p, f, t) =>
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      /^(?:stools?|tubers?|crowns?|plants?|stock)$/.test(wordAt(p, f - 1)) &&
      p.slice(t).some((piece) => piece.is === 'word' && /^(?:in|struck|stuck|inserted)$/.test(piece.text)),
    phrasings: [
      'the Salt Harrier stools gave 30, all struck by lunchtime',
      'the Salt Harrier tubers gave me 8 good shoots, all in now',
    ],
    mustNot: ['the Salt Harrier gave me 8 good shoots'],
  },
  {
    name: 'cut up <plant>, got <count> out of it',
    kind: 'strike',
    head: 'get~past <count> out|off|from of? it|them|that',
    shape: 'object',
    when: (p, f) =>
      p.slice(0, f).some((piece) => piece.is === 'word' && /^(?:cut|chopped|hacked)$/.test(piece.text)) &&
      p.slice(0, f).some(({ is }) => is === 'plant'),
    phrasings: ['cut up the Salt Harrier, got 9 out of it, all in modules'],
  },
  {
    name: 'rooting <count> <plant> in <medium>',
    kind: 'strike',
    head: 'root~ing',
    shape: 'object',
    when: (p, f, t) =>
      closeBehind(p, t, 'count') &&
      follows(p, t, 'plant') &&
      !/^(?:be|is|are|were|not)$/.test(wordAt(p, f - 1)),
  },
  {
    name: '<count> cuttings of <plant> went in',
    kind: 'strike',
    head: 'go~past|gone|popped|put|in in|into',
    shape: 'subject',
    when: (p, f, t) =>
      precedes(p, f, 8, 'plant') &&
      precedes(p, f, 8, 'count', 'cutting', 'pots') &&
      (p
        .slice(0, f)
        .some(
          (piece) =>
            piece.is === 'cutting' ||
            (piece.is === 'word' && CUTTINGS.test(piece.text)) ||
            (piece.is === 'count' && piece.quantity.more === true),
        ) ||
        endsAt(p, t) ||
        p[t]?.is === 'pots' ||
        p[t]?.is === 'medium' ||
        (p[t]?.is === 'word' && /^to$/.test(wordAt(p, t)))) &&
      !(p[t]?.is === 'size') &&
      !followsWord(p, t, /^(?:bin|bed|border|ground|compost|garden)$/),
  },
  {
    name: '<count> <plant> in',
    kind: 'strike',
    head: 'in',
    shape: 'subject',
    faint: true,
    when: (p, f, t) =>
      (endsAt(p, t) || p[t]?.is === 'pots') &&
      p[t]?.is !== 'place' &&
      precedes(p, f, 6, 'count', 'pots') &&
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      !p
        .slice(0, f)
        .some(
          (piece) =>
            piece.is === 'word' &&
            ((piece.verb !== undefined && piece.verb.lemma !== 'tip') ||
              /^(?:came|plugs?|liners?)$/.test(piece.text)),
        ),
    phrasings: ['Salt Harrier: a dozen tips in, three pots'],
  },
  {
    name: '<count> <plant> into plugs',
    kind: 'strike',
    head: 'into|in plugs|modules|cells|jiffies',
    shape: 'subject',
    faint: true,
    when: (p, f, t) =>
      endsAt(p, t) &&
      precedes(p, f, 5, 'count') &&
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      !p.slice(0, f).some((piece) => piece.is === 'word' && piece.verb !== undefined),
    phrasings: ['72 Salt Harrier into plugs'],
  },
  {
    name: '<count> <plant>, taken on <day>',
    kind: 'strike',
    head: 'taken|struck',
    shape: 'subject',
    when: (p, f, t) =>
      p[f - 1]?.is === 'break' &&
      (p[t]?.is === 'when' ||
        p[t] === undefined ||
        /^(?:before|after|first|this|earlier)$/.test(wordAt(p, t))) &&
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      p.slice(0, f).some(({ is }) => is === 'count') &&
      !p.slice(0, f).some((piece) => piece.is === 'word' && piece.verb?.form === 'past'),
    phrasings: ['five Salt Harrier basals in perlite, no hormone, taken on Monday'],
  },
  {
    name: 'whacked in <count> <plant>',
    kind: 'strike',
    head: 'whack~past|bang~past|bung~past|pop~past|stick~past|shove~past|sling~past|chuck~past|put~ in',
    shape: 'object',
    when: (p, _f, t) =>
      p[t]?.is === 'count' &&
      closeBehind(p, t, 'plant') &&
      !follows(p, t, 'size') &&
      !followsWord(p, t, /^(?:bed|border|ground|garden)$/),
    phrasings: ['whacked in 16 Salt Harrier this arvo'],
  },
  {
    name: 'dipped <count> <plant> and stuck them in',
    kind: 'strike',
    head: 'dip~past <count>',
    shape: 'object',
    when: (p, _f, t) =>
      closeBehind(p, t, 'plant') &&
      p
        .slice(t)
        .some((piece) => piece.is === 'word' && /^(?:stuck|struck|popped|put|inserted)$/.test(piece.text)),
    phrasings: ['dipped 15 Salt Harrier in honey and stuck em in sand'],
  },
  {
    name: 'put down <count> <plant>',
    kind: 'strike',
    head: 'put~ down <count>',
    shape: 'object',
    when: (p, _f, t) => closeBehind(p, t, 'plant') && !p.slice(t).some(({ is }) => is === 'place'),
    phrasings: ['put down 20 Salt Harrier there on Sunday'],
  },
  {
    name: 'took a mixed pot, <count> <plant> and <count> <plant>',
    kind: 'strike',
    head: 'take~past|strike~past|stick~past|make~past|do~past|fill~past a|one mixed|joint|shared pot|tray|batch',
    shape: 'object',
    when: (p, _f, t) =>
      p.slice(t).some(({ is }) => is === 'count') && p.slice(t).some(({ is }) => is === 'plant'),
    phrasings: [
      "took a mixed pot this afternoon, 3 Salt Harrier and 2 Tallow Bell, it's in the conservatory",
    ],
  },
  {
    name: 'snipped <count> off <plant> and poked them in',
    kind: 'strike',
    head: 'snip~past|nip~past|cut~past|pull~past|take~past <count> more? off|from',
    shape: 'object',
    when: (p, _f, t) =>
      closeBehind(p, t, 'plant') &&
      p
        .slice(t)
        .some(
          (piece) =>
            piece.is === 'word' && /^(?:poked|stuck|pushed|popped|tucked|inserted|struck)$/.test(piece.text),
        ),
    phrasings: ['snipped several more off the Salt Harrier and poked them round the rim of one pot'],
  },
  {
    name: '<count> pieces cut from <plant>',
    kind: 'strike',
    head: '<count> pieces|bits|shoots|stems|lengths cut|taken from|off',
    shape: 'object',
    when: (p, _f, t) => closeBehind(p, t, 'plant'),
    phrasings: ['I have yesterday 12 pieces cut from the Salt Harrier and put them to root in perlite'],
  },
  {
    name: 'whacked <count> <plant> in',
    kind: 'strike',
    head: 'whack~past|bang~past|bung~past|pop~past|shove~past|put~ <count> of? the? <plant> <plant>? in',
    shape: 'object',
    when: (p, _f, t) => !p[t] || p[t]?.is === 'break' || p[t]?.is === 'when',
    phrasings: ['whacked ten Salt Harrier in this arvo, no powder', 'put six Salt Harrier in last Sunday'],
    mustNot: ['put six Salt Harrier in the shed'],
  },
  {
    name: '<count> <plant> cuttings in <medium>',
    kind: 'strike',
    head: 'cuttings .. in|into|on <pots>? of? <medium>',
    shape: 'subject',
    when: (p, f) =>
      precedes(p, f, 5, 'count') &&
      precedes(p, f, 8, 'plant') &&
      !p.slice(0, f).some((piece) => piece.is === 'word' && piece.verb?.form === 'past'),
    phrasings: ['5 Salt Harrier cuttings are now in a jar of water'],
  },
  {
    name: '<pots> of <plant> under fog',
    kind: 'strike',
    head: 'in|into|under|on|with|no under|on|with|at|fog|mist|dip|hormone|powder|cover|lid|bag|bags|glass|<place>',
    shape: 'subject',
    faint: true,
    when: (p, f) =>
      precedes(p, f, 6, 'pots') &&
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      !p.slice(0, f).some((piece) => piece.is === 'word' && piece.verb !== undefined),
  },
  {
    name: '<pots> of <plant>, took them all',
    kind: 'strike',
    head: 'take~past them|those|em all?',
    shape: 'subject',
    when: (p, f, t) =>
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      p.slice(0, f).some(({ is }) => is === 'pots' || is === 'count') &&
      (endsAt(p, t) || p[t]?.is === 'when' || p[t]?.is === 'count') &&
      !p.slice(0, f).some((piece) => piece.is === 'word' && piece.verb?.form === 'past'),
    phrasings: [
      'two pots of Salt Harrier, four in each, took them all on Sunday',
      '6 Salt Harrier cuttings, took those just now',
    ],
    mustNot: ['6 Salt Harrier cuttings, took those to the shed'],
  },
  {
    name: '<count> cuttings of <plant> made',
    kind: 'strike',
    head: 'cuttings|cutting|pieces|slips|shoots|<cutting> .. made|done|struck|taken|prepared|inserted|stuck|pushed|cut',
    shape: 'subject',
    when: (p, f, t) =>
      p.some(({ is }) => is === 'count') &&
      !p.slice(0, t).some((piece) => piece.is === 'word' && /^(?:and|then|took|take)$/.test(piece.text)) &&
      (p.slice(0, t).some(({ is }) => is === 'plant') || closeBehind(p, f, 'plant')) &&
      !p
        .slice(0, t)
        .some(
          (piece) =>
            piece.is === 'word' &&
            /^(?:have|has|are|were|be|to|not|need|needs|want|get|when|how|should|must|rooted|dead|roots|root)$/.test(
              piece.text,
            ) &&
            !/^(?:i|we)$/.test(wordAt(p, p.indexOf(piece) - 1)),
        ) &&
      !/^(?:roots|root|off|well|it)$/.test(wordAt(p, t)),
    phrasings: ['five rosemary cuttings done', '6 cuttings of Salt Harrier I have made in water'],
    mustNot: ['six Tallow Bell cuttings have made roots', 'three cuttings were taken by slugs'],
  },
  {
    name: 'new cuttings: <count> <plant>',
    kind: 'strike',
    head: 'cuttings|basals|slips|basal|<cutting>',
    shape: 'subject',
    faint: true,
    when: bareCuttings,
  },
  {
    name: "that's another <count> <plant>",
    kind: 'strike',
    head: "that's|thats|there's <count>",
    shape: 'object',
    faint: true,
    when: (p, _f, t) => {
      const count = p[t - 1];
      const after = p[t]?.is === 'plant' ? t + 1 : t + 2;
      return (
        count?.is === 'count' &&
        count.quantity.more === true &&
        p.slice(t, t + 2).some(({ is }) => is === 'plant') &&
        (endsAt(p, after) || /^(?:in|done|under|struck)$/.test(wordAt(p, after)))
      );
    },
    phrasings: ["that's another eight Salt Harrier in the big tray by the door"],
    mustNot: ["that's another eight Salt Harrier gone"],
  },
  {
    name: '<pots> of <plant>',
    kind: 'strike',
    head: '<pots>',
    shape: 'subject',
    faint: true,
    when: (p) =>
      p.some(({ is }) => is === 'plant') &&
      allSlots(p) &&
      !p.some(({ is }) => is === 'celsius') &&
      (sharesPot(p) || !p.some(({ is }) => is === 'size')),
    phrasings: ['6 Salt Harrier, one 9cm pot'],
  },
  {
    name: '<count> <plant>, dipped',
    kind: 'strike',
    head: 'iba|dipped|clonex|hormone',
    shape: 'subject',
    faint: true,
    when: (p) =>
      p.some(({ is }) => is === 'plant') &&
      p.some(({ is }) => is === 'count') &&
      !p.some((piece) => piece.is === 'word' && piece.verb !== undefined && !/^dip$/.test(piece.verb.lemma)),
  },
];

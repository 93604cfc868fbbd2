/** Looked for roots. */
import type { Piece } from '../pieces.js';
import { closeBehind, endsAt, follows, followsWord, precedes, type Rule, wordAt } from './rule.js';

const rootedIsAdjective = (pieces: readonly Piece[], from: number, to: number): boolean => {
  let lead = from - 1;
  while (/^(?:well|already|little|young|small|tiny|nicely|fully)$/.test(wordAt(pieces, lead))) lead--;
  const before = wordAt(pieces, lead);
  // "Brought six little rooted plants", "ten young ones already well rooted in it": as they came.
  const came = pieces
    .slice(0, from)
    .some(
      (piece) =>
        piece.is === 'word' &&
        /^(?:came|received|arrived|bought|brought|delivered|given|sent)$/.test(piece.text) &&
        !/^(?:have|has|had|are|is)$/.test(wordAt(pieces, from - 1)),
    );
  if (came && lead < from - 1) return true;
  const verbAround = (piece: Piece): boolean =>
    piece.is === 'word' &&
    piece.verb?.form === 'past' &&
    !/^(?:rooted|had|been|were|was|are|is|have|has)$/.test(piece.text);
  if (
    /^(?:plants?|plugs?|liners?|babies|seedlings|cuttings|one|ones)$/.test(wordAt(pieces, to)) &&
    !/^(?:are|is|have|has)$/.test(before)
  )
    return true;
  if (
    /^(?:arrived|came|bought|received|delivered|already|come)$/.test(before) &&
    pieces.slice(0, from).some(verbAround)
  )
    return true;
  // "Given a rooted westringia".
  if (/^(?:a|an|another)$/.test(before) && pieces[to]?.is === 'plant') return true;
  // "4 flats of 50 rooted Salt Harrier came in".
  if (
    pieces[to]?.is === 'plant' &&
    pieces[from - 1]?.is !== 'word' &&
    pieces.slice(0, from).some(({ is }) => is === 'word') &&
    pieces
      .slice(0, from)
      .some(
        (piece) =>
          piece.is === 'word' &&
          /^(?:came|received|arrived|got|bought|bringing|brought|dropped|turned|given)$/.test(piece.text),
      )
  )
    return true;
  const ofPlant =
    wordAt(pieces, to) === 'of' &&
    (pieces[to + 1]?.is === 'plant' ||
      (/^(?:the|my|those)$/.test(wordAt(pieces, to + 1)) && pieces[to + 2]?.is === 'plant'));
  const adjective = pieces[to]?.is === 'plant' || ofPlant;
  // "The ten rooted Salt Harrier are in 3 inch pots".
  if (
    (pieces[from - 1]?.is === 'count' || /^(?:the|my|those|all)$/.test(before)) &&
    adjective &&
    pieces.slice(to).some(({ is }) => is === 'size')
  )
    return true;
  if (
    adjective &&
    (pieces[from - 1]?.is === 'count' || /^(?:the|my|those|these)$/.test(before)) &&
    pieces.some(verbAround)
  )
    return true;
  return closeBehind(pieces, to, 'medium') && closeBehind(pieces, to, 'plant');
};

/** "… the eight that had rooted" behind another act. */
const tellsWhichOnes = (pieces: readonly Piece[], from: number): boolean => {
  let at = from - 1;
  // "Lost all those not rooted".
  if (wordAt(pieces, at) === 'not' && /^(?:those|them|ones|all|that|any)$/.test(wordAt(pieces, at - 1)))
    return pieces
      .slice(0, at)
      .some(
        (piece) =>
          piece.is === 'word' &&
          /^(?:lose|bin|chuck|throw|compost|give|sell|move)$/.test(piece.verb?.lemma ?? ''),
      );
  while (/^(?:had|have|has|already|all|never|not|hadn't|haven't|hasn't|didn't)$/.test(wordAt(pieces, at)))
    at--;
  return (
    /^(?:that|which|who)$/.test(wordAt(pieces, at)) &&
    pieces
      .slice(0, at)
      .some(
        (piece) =>
          piece.is === 'word' &&
          piece.verb?.form === 'past' &&
          !/^(?:be|have|check|look)$/.test(piece.verb.lemma),
      )
  );
};

const notAboutRoots = (pieces: readonly Piece[], _from: number, to: number): boolean =>
  /^(?:cutting|cuttings|powder|hormone|rot|stock|ball|balls|bound)$/.test(wordAt(pieces, to)) ||
  pieces.some(
    (piece) => piece.is === 'word' && /^(?:arrived|delivered|received|bought|came|dropped)$/.test(piece.text),
  );

/** "Culled four, no roots": why those went. */
const saysWhyGone = (pieces: readonly Piece[], from: number): boolean =>
  pieces[from - 1]?.is === 'break' &&
  pieces
    .slice(0, from)
    .some(
      (piece, at) =>
        piece.is === 'word' &&
        /^(?:cull|bin|chuck|throw|compost|dump|toss|ditch|scrap)$/.test(piece.verb?.lemma ?? '') &&
        pieces.slice(at, from).some(({ is }) => is === 'count'),
    );

/** "…, nothing": what the look at a plant ends with. */
const NOTHING = /^(?:nothing|nowt|nada|zilch|zip|nil|none|nope)$/;
const saysNothing = (pieces: readonly Piece[], _from: number, to: number): boolean => {
  const at = pieces.findIndex((piece, n) => n > to && piece.is === 'break');
  const end = /^(?:yet|still|so)$/.test(wordAt(pieces, at + 2)) ? at + 3 : at + 2;
  return (
    pieces.slice(to, at).some(({ is }) => is === 'plant') &&
    NOTHING.test(wordAt(pieces, at + 1)) &&
    (pieces[end] === undefined || pieces[end].is === 'break')
  );
};

export const checkRules: readonly Rule[] = [
  {
    name: '<count> held firm',
    kind: 'check',
    head: 'hold~|resist~|cling~|hang~ fast|firm|on|tight|tight?',
    shape: 'subject',
    when: (p, f, t) =>
      precedes(p, f, 3, 'count') &&
      (t > f + 1 || /^resist/.test(wordAt(p, f))) &&
      !followsWord(p, t, /^leaves$/),
    phrasings: ['tugged the ember fox, 3 hold fast'],
    mustNot: ['holding on till Saturday with the ember fox'],
  },
  {
    name: '<plant> fully rooted',
    kind: 'check',
    head: 'fully|completely root~past',
    shape: 'subject',
    rooted: 'all',
    when: (p, f) => precedes(p, f, 5, 'plant'),
    phrasings: ['Salt Harrier fully rooted'],
  },
  {
    name: 'the last <plant> has rooted',
    kind: 'check',
    head: 'root~past',
    shape: 'subject',
    rooted: 'all',
    when: (p, f) => {
      const at = /^(?:has|have|is|are)$/.test(wordAt(p, f - 1)) ? f - 2 : f - 1;
      return p[at]?.is === 'plant' && /^(?:last|final)$/.test(wordAt(p, at - 1));
    },
    phrasings: ['the last Salt Harrier has rooted'],
    mustNot: ['moved the last Salt Harrier'],
  },
  {
    name: 'tugged <plant>, no give',
    kind: 'check',
    head: 'no give|movement',
    shape: 'object',
    rooted: 'all',
    when: (p) =>
      p.some((piece) => piece.is === 'word' && /^(?:tug|tugged|pull|pulled|tugging)$/.test(piece.text)),
    phrasings: ['tugged the Salt Harrier, no give on any of them'],
  },
  {
    name: 'roots at the holes of <plant>',
    kind: 'check',
    head: 'roots at|through|out|in|from of? the? drainage|pot|tray|bottom? holes|bottom',
    shape: 'object',
    rooted: 'some',
    phrasings: ['roots at the holes on the Salt Harrier'],
  },
  {
    name: 'roots all round the edge of <plant>',
    kind: 'check',
    head: 'roots are? all|<count>? right? round|around the? edge|edges|outside|pot|rootball|sides',
    shape: 'object',
    rooted: 'some',
    phrasings: ['knocked one Salt Harrier out of its pot, roots all round the edge'],
  },
  {
    name: 'gave <plant> a tug',
    kind: 'check',
    sense: 'look',
    head: 'give~past .. a tug|pull',
    shape: 'object',
  },
  {
    name: '<count> of <plant> have rooted',
    kind: 'check',
    head: 'well? root~past|rooty',
    shape: 'subject',
    // "Potted the eight that had rooted": which ones.
    unless: (p, f, t) => rootedIsAdjective(p, f, t) || tellsWhichOnes(p, f),
  },
  { name: '<plant> are rooting', kind: 'check', head: 'be~ rooting', shape: 'subject', rooted: 'some' },
  {
    name: '<plant> rooting like mad',
    kind: 'check',
    head: 'rooting like|well|nicely|away|fast|quickly mad|crazy|anything|weeds|now?',
    shape: 'subject',
    rooted: 'some',
    when: (p, f) => precedes(p, f, 4, 'plant'),
    phrasings: ['Salt Harrier rooting like mad, 5 of them', 'the Tallow Bell are rooting nicely'],
    mustNot: ['rooting like mad in the drawer for a label'],
  },
  {
    name: '<count>/<count> rooting',
    kind: 'check',
    head: 'rooting',
    shape: 'subject',
    when: (p, f, t) =>
      precedes(p, f, 6, 'plant', 'count') &&
      (endsAt(p, t) || p[t]?.is === 'count') &&
      !(p[t]?.is === 'word' && /^(?:powder|hormone|gel)$/.test(wordAt(p, t))),
  },
  {
    name: '<count> of <plant> have roots',
    kind: 'check',
    head: 'have~|get~|grow~|make~|show~|form~|with|develop~|push~|put~|throw~ .. roots|root',
    shape: 'subject',
    // "Put them in the propagator to root" tells what for.
    unless: (p, f, t) =>
      notAboutRoots(p, f, t) ||
      p.slice(f, t).some((piece) => piece.is === 'word' && piece.text === 'no') ||
      wordAt(p, t - 2) === 'to' ||
      // "Potted on the three with roots": which ones.
      (wordAt(p, f) === 'with' &&
        p
          .slice(0, f)
          .some(
            (piece) =>
              piece.is === 'word' &&
              piece.verb?.form === 'past' &&
              /^(?:pot|plant|move|give|sell|pinch|put|shift|send|swap)$/.test(piece.verb.lemma),
          )),
  },
  {
    name: '<count> showing roots',
    kind: 'check',
    head: 'showing|sprouted|sprouting|making|grown|grew|pushing .. roots|root',
    shape: 'subject',
  },
  {
    name: 'roots on <count> of <plant>',
    kind: 'check',
    head: 'roots|root on|in|from|at|coming|showing|poking|out|through|visible|under',
    shape: 'object',
    unless: notAboutRoots,
  },
  {
    name: 'no roots',
    phrasings: ['Salt Harrier no roots'],
    kind: 'check',
    head: 'no|zero|zilch|not|nary|any|nothing .. roots|root',
    shape: 'object',
    rooted: 'none',
    unless: (p, f, t) =>
      notAboutRoots(p, f, t) ||
      saysWhyGone(p, f) ||
      (wordAt(p, f) === 'any' &&
        !p
          .slice(0, f)
          .some(
            (piece) =>
              piece.is === 'word' &&
              /^(?:not|no|never|without|haven't|hasn't|don't|isn't|aren't|can't|didn't)$/.test(piece.text),
          )),
  },
  {
    name: 'nothing rooted on <plant>',
    kind: 'check',
    head: 'nothing|nowt has|is? root~past|rooting',
    shape: 'subject',
    rooted: 'none',
    when: (p, f, t) => precedes(p, f, 6, 'plant') || follows(p, t, 'plant'),
    phrasings: ['By the Salt Harrier is nothing rooted', 'nothing rooted on the Salt Harrier'],
  },
  {
    name: 'not one root',
    phrasings: ['not one root on the Salt Harrier'],
    kind: 'check',
    head: 'not|never <count> root|roots',
    shape: 'subject',
    rooted: 'none',
  },
  {
    name: 'no sign of roots',
    kind: 'check',
    head: 'no sign|signs|hint|trace|evidence of roots|root|rooting|life|a',
    shape: 'object',
    rooted: 'none',
  },
  {
    name: '<plant> nothing doing',
    kind: 'check',
    head: 'nothing|nowt|zilch|nada doing|happening|yet|showing',
    shape: 'subject',
    rooted: 'none',
    when: (p, f, t) => p[f - 1]?.is === 'plant' && endsAt(p, t),
    phrasings: ['had a peek, Salt Harrier nothing doing, Tallow Bell 3 rooted'],
  },
  {
    name: 'nothing on <plant>',
    kind: 'check',
    head: 'nothing|nowt|zilch|nada yet|so? on|from|under|far|doing',
    shape: 'object',
    rooted: 'none',
    // "Nothing doing here today" is talk.
    when: (p, _f, t) => wordAt(p, t - 1) !== 'doing' || p.some(({ is }) => is === 'plant'),
  },
  {
    name: 'nothing on <plant> yet',
    kind: 'check',
    head: 'nothing|nowt|zilch|nada on|from|under|with|happening|yet',
    shape: 'object',
    rooted: 'none',
    when: (p, _f, t) => follows(p, t, 'plant') || precedes(p, t, 8, 'plant'),
  },
  {
    name: '<count> roots',
    kind: 'check',
    head: '<count> root|roots',
    shape: 'subject',
    unless: (p, f, t) => notAboutRoots(p, f, t) || /^(?:of|was|from)$/.test(wordAt(p, t)),
  },
  {
    name: '<count> have struck',
    kind: 'check',
    head: 'have~|be~ struck|taken|took|struck',
    shape: 'subject',
    when: (p, f, t) =>
      !closeBehind(p, t, 'plant', 'count', 'cutting') &&
      !/^(?:i|we)$/.test(wordAt(p, f - 1)) &&
      precedes(p, f, 7, 'count', 'plant') &&
      (endsAt(p, t) || /^(?:nicely|well|so|far|since)$/.test(wordAt(p, t))) &&
      p.slice(0, f).every((piece) => !(piece.is === 'word' && /^cuttings$/.test(piece.text))) &&
      !/^(?:was|were|are|is)$/.test(wordAt(p, f)),
  },
  {
    name: '<count> of <count> struck',
    kind: 'check',
    head: 'struck|took',
    shape: 'subject',
    when: (p, f, t) =>
      endsAt(p, t) &&
      p
        .slice(Math.max(0, f - 4), f)
        .some((piece) => piece.is === 'count' && piece.quantity.outOf !== undefined),
  },
  {
    name: '<plant>: none yet',
    kind: 'check',
    head: '<count> yet',
    shape: 'subject',
    rooted: 'none',
    faint: true,
    when: (p, f) => {
      const piece = p[f];
      return (
        piece?.is === 'count' && piece.quantity.value === 0 && p.slice(0, f).some(({ is }) => is === 'plant')
      );
    },
  },
  {
    name: 'pulled: <count> checked',
    kind: 'aside',
    sense: 'sample',
    head: 'check~past|inspected',
    shape: 'subject',
    when: (p, f, t) =>
      precedes(p, f, 4, 'count', 'pots') &&
      endsAt(p, t) &&
      p.slice(t).some(({ is }) => is === 'count') &&
      !/^(?:i|we|have|i've)$/.test(wordAt(p, f - 1)),
  },
  {
    name: 'looked at <plant>, nothing',
    kind: 'check',
    head: 'check~past|inspect~past|tug~past|look~past at|on?',
    shape: 'object',
    rooted: 'none',
    when: saysNothing,
    phrasings: ['checked the Salt Harrier, nothing', 'tugged the Tallow Bell, nowt yet'],
  },
  {
    name: 'checked <plant>',
    kind: 'check',
    sense: 'look',
    head: 'check~|inspect~past',
    shape: 'object',
    unless: (p, f, t) =>
      (/^(?:the|my|on|for|out)$/.test(wordAt(p, t)) &&
        /^(?:weather|forecast|post|time|label|labels|door|thermostat|temperature|heating|phone|email|frost|heater|propagator)$/.test(
          wordAt(p, t + 1),
        )) ||
      p[t]?.is === 'place' ||
      (wordAt(p, f) === 'check' && /^(?:in|me|it|this|my)$/.test(wordAt(p, t))),
  },
  {
    name: 'looked at <plant>',
    kind: 'check',
    sense: 'look',
    head: 'look~past|peek~past|peer~past at|under|over|in',
    shape: 'object',
    when: (p, _f, t) => follows(p, t, 'plant'),
  },
  {
    name: 'had a look at <plant>',
    kind: 'check',
    sense: 'look',
    head: 'look|peek|gander|squint|nosy|check at|under|on|over',
    shape: 'object',
    when: (p, f, t) =>
      follows(p, t, 'plant') &&
      precedes(p, f, 4, 'word') &&
      p.slice(0, f).some((piece) => piece.is === 'word' && /^(?:had|took|have|quick|did)$/.test(piece.text)),
  },
  {
    name: 'tugged <plant>',
    kind: 'check',
    sense: 'look',
    head: 'tug~past|tip~past|knock~past|turn~past out|on?',
    shape: 'object',
    when: (p, f, t) =>
      closeBehind(p, t, 'plant') &&
      (wordAt(p, f) === 'tugged' ||
        p
          .slice(t)
          .some(
            (piece) =>
              piece.is === 'word' &&
              /^(?:root|roots|rooted|resist|resisted|held|tight|firm)$/.test(piece.text),
          )),
    phrasings: ['tipped out ten Salt Harrier, six had roots'],
  },
  {
    name: '<count> held tight',
    kind: 'check',
    head: 'held|resisted|resist|holding|holds tight|firm|fast|on',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 3, 'count'),
  },
  {
    name: 'tugged <plant>, <count> holding',
    kind: 'check',
    head: 'holding|hold|held',
    shape: 'subject',
    when: (p, f, t) =>
      endsAt(p, t) &&
      precedes(p, f, 3, 'count') &&
      p.slice(0, f).some((piece) => piece.is === 'word' && /^(?:tug|tugged|pull|pulled)$/.test(piece.text)),
    phrasings: ['gave the Salt Harrier a gentle tug and four of the six are holding'],
  },
  {
    name: '<count> resist',
    kind: 'check',
    head: 'resist|resisted|resisting',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 3, 'count'),
  },
  {
    name: 'pulled: looked at <count>',
    kind: 'aside',
    sense: 'sample',
    head: 'look~past|sample~past|tug~past|lift~past|pull~past at|up|out? <count>',
    shape: 'object',
    when: (p, _f, t) => p.slice(t).some(({ is }) => is === 'count'),
  },
  {
    name: 'pulled: <count> looked at',
    kind: 'aside',
    sense: 'sample',
    head: '<count> looked at',
    shape: 'object',
    when: (p, _f, t) => p.slice(t).some(({ is }) => is === 'count'),
  },
  {
    name: '<plant> still nothing',
    kind: 'check',
    head: 'still|as nothing|nowt|<count>|none yet?',
    shape: 'subject',
    rooted: 'none',
    when: (p, f, t) =>
      endsAt(p, t) &&
      p[f - 1]?.is === 'plant' &&
      p.slice(f, t).every((piece) => piece.is !== 'count' || piece.quantity.value === 0),
    phrasings: ['Salt Harrier still nothing'],
  },
  {
    name: '<plant> <count> of <count>',
    kind: 'check',
    head: '<count>',
    shape: 'subject',
    faint: true,
    when: (p, f, t) => {
      const piece = p[f];
      return (
        p.length === t &&
        piece?.is === 'count' &&
        piece.quantity.outOf !== undefined &&
        p.slice(0, f).every(({ is }) => is === 'plant' || is === 'break') &&
        f > 0
      );
    },
    phrasings: ['Salt Harrier 2 of 5'],
    mustNot: ['moved Salt Harrier 2 of 5'],
  },
  {
    name: 'none of <plant> have done a thing',
    kind: 'check',
    head: '<count> .. done|doing|happening a? thing|anything|below|under|yet',
    shape: 'object',
    rooted: 'none',
    when: (p, f) => {
      const piece = p[f];
      return piece?.is === 'count' && piece.quantity.value === 0 && p.some(({ is }) => is === 'plant');
    },
    phrasings: ['none of the Salt Harrier have done a thing below'],
  },
  { name: 'pulled <count> from <plant>', kind: 'aside', sense: 'sample', head: 'pull~past', shape: 'object' },
];
export { followsWord };

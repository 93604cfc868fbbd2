/** Who plants went to: "to Maureen", "with Thripley Plants", "gave my sister two". */
import { wordAt } from '../grammar/rule.js';
import { isEnglish } from '../row/english.js';
import { isKnown } from '../row/lexicon.js';
import type { Clause } from '../clauses/clauses.js';
import type { Piece } from '../pieces/pieces.js';
import { nameEnd, wordsOf } from './recipients/name-told.js';
import { withinEnd, withinStart } from './recipients/within.js';
import { CARRIER } from './recipients/words.js';
import type { Token } from '../row/tokens.js';

const LEAD = /^(?:to|with|onto|upon|on|by|2)$/;
/** The recipient's words as written, or undefined. */
export function recipientOf(
  pieces: readonly Piece[],
  clause: Clause,
  tokens: readonly Token[],
  text: string,
): string | undefined {
  const { hit } = clause;
  if (!hit) return undefined;
  const letHave =
    hit.rule.sense === 'recipient within'
      ? wordsOf(
          pieces,
          withinStart(pieces, hit.from + 1),
          withinEnd(pieces, hit.to - 1),
          tokens,
          text,
        )?.replace(/ (?:her|his|their|some)$/i, '')
      : undefined;
  if (letHave !== undefined) return letHave;
  // "Left three out for Mrs Abbery", "two went to the woman with the whippet".
  if (
    /^(?:for|to)$/.test(wordAt(pieces, hit.to - 1)) &&
    !/^(?:be|live|stay|join)$/.test(wordAt(pieces, hit.to))
  )
    return wordsOf(pieces, hit.to, nameEnd(pieces, hit.to, clause.to, tokens), tokens, text);
  if (hit.rule.sense === 'recipient first') {
    let start = clause.from;
    // "After lunch, Doreen collected six".
    const mark = pieces.findIndex(({ is }, at) => at > start && at < hit.from - 1 && is === 'break');
    if (mark > 0 && /^(?:after|before|at|during)$/.test(wordAt(pieces, start))) start = mark + 1;
    while (
      start < hit.from &&
      // "Over summer the Lions bought six off me": the day is no part of who it was.
      (/^(?:when|break)$/.test(pieces[start]?.is ?? '') ||
        (!tokens[pieces[start]?.from ?? 0]?.capital &&
          /^(?:and|then|today|so|also|on|in|over|during)$/.test(wordAt(pieces, start))))
    )
      start++;
    const verb = pieces.findIndex(
      (piece, at) => at > start && piece.is === 'word' && piece.verb?.form === 'past',
    );
    let end = verb < 0 ? hit.from : Math.min(verb, hit.from);
    while (
      end > start &&
      (pieces[end - 1]?.is === 'break' || /^(?:has|have|had|just|also)$/.test(wordAt(pieces, end - 1)))
    )
      end--;
    // "Winnie's taken two": who has taken them.
    const name = wordsOf(pieces, start, end, tokens, text)?.replace(/'s$/, '');
    if (name !== undefined && !/(?:^| )(?:he|she|they|it|who)$/i.test(name)) return name;
  }
  return (
    behindPreposition(pieces, hit.to, clause.to, tokens, text) ??
    indirectObject(pieces, hit.to, clause.to, tokens, text) ??
    behindPreposition(pieces, hit.from, clause.to, tokens, text) ??
    (/^(?:to|for)$/.test(wordAt(pieces, clause.from))
      ? behindPreposition(pieces, clause.from, hit.from, tokens, text)?.replace(
          / (?:i|we|have|i have|i've)$/i,
          '',
        )
      : undefined) ??
    (hit.rule.sense === 'delivery'
      ? (behindComma(pieces, hit.to, clause.to, tokens, text) ??
        behindPreposition(pieces, hit.to, clause.to, tokens, text, true))
      : undefined)
  );
}

/** "To Hettie", where that is all that a row says. */
export function giftBehind(
  pieces: readonly Piece[],
  tokens: readonly Token[],
  text: string,
): string | undefined {
  const end = nameEnd(pieces, 1, pieces.length, tokens);
  return wordAt(pieces, 0) === 'to' && end === pieces.length
    ? wordsOf(pieces, 1, end, tokens, text)
    : undefined;
}

/** "Palmed six off on Edna": a capital that is no place and no day; in a note without any, a word that nobody knows. */
function isOnSomebody(pieces: readonly Piece[], on: number, tokens: readonly Token[]): boolean {
  const whom = pieces[on + 1];
  return (
    whom?.is === 'word' &&
    !isKnown(whom.text) &&
    (tokens[whom.from]?.capital === true ||
      (whom.verb === undefined && !isEnglish(whom.text) && isSmall(tokens)))
  );
}

/** Written without a capital anywhere, so that none tells a name. */
const isSmall = (tokens: readonly Token[]): boolean => !tokens.some(({ capital }) => capital);

/** "…, Oxbarrow": a name behind a comma, where nothing else tells of one. */
function behindComma(
  pieces: readonly Piece[],
  from: number,
  to: number,
  tokens: readonly Token[],
  text: string,
): string | undefined {
  for (let at = from; at < to; at++) {
    const piece = pieces[at];
    const next = pieces[at + 1];
    if (piece?.is !== 'break' || next?.is !== 'word') continue;
    if (!tokens[next.from]?.capital && !isOnSomebody(pieces, at, tokens)) continue;
    return wordsOf(pieces, at + 1, nameEnd(pieces, at + 1, to, tokens), tokens, text);
  }
  return undefined;
}

function behindPreposition(
  pieces: readonly Piece[],
  from: number,
  to: number,
  tokens: readonly Token[],
  text: string,
  isDelivery = false,
): string | undefined {
  for (let at = from; at < to; at++) {
    const piece = pieces[at];
    const lead = wordAt(pieces, at);
    // "On the lorry for Hexley".
    // "36 Salt Harrier for Oxbarrow", of what was sent out.
    const carriedFor =
      lead === 'for' &&
      (CARRIER.test(wordAt(pieces, at - 1)) || (isDelivery && isOnSomebody(pieces, at, tokens)));
    const two =
      piece?.is === 'count' &&
      piece.quantity.value === 2 &&
      piece.to - piece.from === 1 &&
      pieces.slice(from, at).some(({ is }) => is === 'plant') &&
      pieces[at + 1]?.is === 'word' &&
      // "The job took two hours".
      !/^(?:hours?|days?|minutes?|mins|weeks?|months?|trips?|goes|attempts)$/.test(wordAt(pieces, at + 1)) &&
      // "Gave Salt Harrier 2 to Edna": that two counts.
      !/^(?:to|for|with|onto|on|by)$/.test(wordAt(pieces, at + 1));
    if (!LEAD.test(lead) && !two && !carriedFor) continue;
    if (
      lead === 'on' &&
      !/^(?:poor|mr|mrs|my|the|old)$/.test(wordAt(pieces, at + 1)) &&
      !isOnSomebody(pieces, at, tokens)
    )
      continue;
    // "The six on the porch": where they stood.
    if (lead === 'on' && pieces[at + 2]?.is === 'place') continue;
    // "Away to Ken on the van": by what they went.
    if (/^(?:on|by)$/.test(lead) && [1, 2].some((n) => CARRIER.test(wordAt(pieces, at + n)))) continue;
    // "Forgot to write how many": to do.
    if (
      lead === 'to' &&
      /^(?:forgot|forgotten|meant|going|trying|remembered|able)$/.test(wordAt(pieces, at - 1))
    )
      continue;
    if (lead === 'to' && isWhatFor(pieces, at + 1, tokens)) continue;
    const end = nameEnd(pieces, at + 1, to, tokens);
    const name = wordsOf(pieces, at + 1, end, tokens, text);
    if (name === undefined) continue;
    const corrected = correction(pieces, end, to, tokens, text);
    return corrected ?? name;
  }
  return undefined;
}

/** "To cheer her up", "to shut him up": what it was for. */
const isWhatFor = (pieces: readonly Piece[], at: number, tokens: readonly Token[]): boolean =>
  pieces[at]?.is === 'word' &&
  tokens[pieces[at]?.from ?? 0]?.capital !== true &&
  /^(?:her|him|them|us|me|myself)$/.test(wordAt(pieces, at + 1)) &&
  !/^(?:for|with)$/.test(wordAt(pieces, at));

/** "Gave my sister 2 Neon Rodeo": what stands between the verb and the number or plant. */
function indirectObject(
  pieces: readonly Piece[],
  from: number,
  to: number,
  tokens: readonly Token[],
  text: string,
): string | undefined {
  let end = from;
  while (
    end < to &&
    end < from + 6 &&
    pieces[end]?.is === 'word' &&
    !/^(?:as|for|because|since|so|when|bar|barring|except|save)$/.test(wordAt(pieces, end)) &&
    !/^(?:a|an|away|out|some|back|up)$/.test(wordAt(pieces, end))
  )
    end++;
  if (
    end === from ||
    end >= to ||
    !(
      pieces[end]?.is === 'count' ||
      pieces[end]?.is === 'plant' ||
      /^(?:a|an|some)$/.test(wordAt(pieces, end))
    )
  ) {
    // A person named like a crop: "gave Rosemary a …".
    return undefined;
  }
  let last = end;
  while (
    last > from &&
    /^(?:have|with|to|the|all|of|last|first|remaining|final)$/.test(wordAt(pieces, last - 1))
  )
    last--;
  return wordsOf(pieces, from, last, tokens, text);
}

/** "To Trev, actually it was Lorraine". */
function correction(
  pieces: readonly Piece[],
  from: number,
  to: number,
  tokens: readonly Token[],
  text: string,
): string | undefined {
  let at = from;
  if (pieces[at]?.is === 'break') at++;
  if (!/^(?:actually|no|sorry|rather|i|or)$/.test(wordAt(pieces, at))) return undefined;
  while (
    at < to &&
    (/^(?:actually|no|sorry|rather|i|mean|or|it|was|to|that|wait)$/.test(wordAt(pieces, at)) ||
      pieces[at]?.is === 'break')
  )
    at++;
  const piece = pieces[at];
  if (piece?.is !== 'word' || !tokens[piece.from]?.capital) return undefined;
  return wordsOf(pieces, at, nameEnd(pieces, at, to, tokens), tokens, text);
}

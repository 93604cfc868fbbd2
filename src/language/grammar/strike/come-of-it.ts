/** Cuttings told by what came of a plant that was cut or broken: "got 9 out of it", "ended up with six tips". */
import { CUTTINGS } from '../taken-away.js';
import type { Piece } from '../../pieces/pieces.js';
import { follows, followsWord, type Rule, wordAt } from '../rule.js';

/** Cut or broken before, whoever did it. */
const WAS_CUT =
  /^(?:cut|chopped|hacked|pruned|trimmed|snapped|broke|broken|snipped|prune|trim|chop|haircut|tidy|secateurs|scissors|snips|shears)$/;
const PARTS = /^(?:bits|pieces|lengths|stems?|shoots|slips|cuttings?|tips)$/;

const wasCut = (pieces: readonly Piece[], from: number): boolean =>
  pieces.slice(0, from).some((piece) => piece.is === 'word' && WAS_CUT.test(piece.text));

const isNamed = (pieces: readonly Piece[], from: number): boolean =>
  pieces.slice(0, from).some(({ is }) => is === 'plant');

/** Cuttings by name, straight behind their number or a word that praises them. */
const ofCuttings = (pieces: readonly Piece[], count: number): boolean =>
  pieces
    .slice(count + 1, count + 4)
    .some((piece) => piece.is === 'cutting' || (piece.is === 'word' && CUTTINGS.test(piece.text)));

export const comeOfIt: readonly Rule[] = [
  {
    name: '<plant> cut up, got <count> out of it',
    kind: 'strike',
    head: 'get~past|make~past|manage~past|have~past|salvaged|rescued|saved <count> good|decent|nice|usable? cuttings|slips|bits|pieces|lengths|<cutting>? cuttings? out|off|from of? it|them|that|these|those',
    shape: 'object',
    when: (p, f, t) =>
      isNamed(p, f) &&
      (wasCut(p, f) ||
        p
          .slice(f, t)
          .some(
            (piece) =>
              piece.is === 'cutting' || (piece.is === 'word' && /^(?:cuttings|slips)$/.test(piece.text)),
          )),
    unless: (p, f, t) =>
      /^(?:she|he|they)$/.test(wordAt(p, f - 1)) || followsWord(p, t, /^(?:rooted|died|dead|rotted)$/),
    phrasings: [
      'cut up the Salt Harrier, got 9 out of it, all in modules',
      'the dog broke a Salt Harrier and I got 5 cuttings out of it',
      'trimmed the Salt Harrier, salvaged four decent bits from it',
    ],
    mustNot: ['watered the Salt Harrier and got 9 out of it'],
  },
  {
    name: '<plant> cut back, ended up with <count> cuttings',
    kind: 'strike',
    head: 'ended|finished|wound|came up|away|out with <count>',
    shape: 'object',
    when: (p, f, t) =>
      isNamed(p, f) &&
      (ofCuttings(p, t - 1) ||
        ((PARTS.test(wordAt(p, t)) || PARTS.test(wordAt(p, t + 1))) &&
          (wasCut(p, f) || follows(p, t, 'medium')))),
    unless: (p, _f, t) => followsWord(p, t, /^(?:rooted|roots|died|dead|rotted|left|spare)$/),
    phrasings: [
      'took the secateurs to the Salt Harrier and ended up with six tips in sand',
      'trimmed the Salt Harrier, came away with five good cuttings',
    ],
    mustNot: [
      'lost some Salt Harrier, ended up with six rooted cuttings',
      'ended up with six Salt Harrier cuttings left',
    ],
  },
];

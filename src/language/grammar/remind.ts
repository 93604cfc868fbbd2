/** Reminders asked for, and intentions told. */
import type { Piece } from '../pieces.js';
import { wordAt } from './rule.js';

export interface RemindRule {
  readonly name: string;
  /** Matched from a word of the sentence on; what stands behind it is what is to be done. */
  readonly words: readonly string[];
  /** Only where the next word is the plain form of a verb. */
  readonly beforeVerb?: true;
}

const asked = (name: string, phrase: string): RemindRule => ({ name, words: phrase.split(' ') });
const intended = (name: string, phrase: string): RemindRule => ({
  name,
  words: phrase.split(' '),
  beforeVerb: true,
});

/** `~` stands for any word, so that "remind me on Friday to" and "remember me" are read alike. */
const remindRules: readonly RemindRule[] = [
  asked('remind me to', 'remind me'), asked('remind us to', 'remind us'), asked('remember me to', 'remember me'), asked('remind <day>:', 'remind'),
  asked('set a reminder', 'set a reminder'), asked('set me a reminder', 'set me a reminder'), asked('set reminder', 'set reminder'), asked('put a reminder', 'put a reminder'), asked('set an alarm', 'set an alarm'), asked('make a reminder', 'make a reminder'), asked('reminder:', 'reminder'), asked('add a reminder', 'add a reminder'), asked('need a reminder', 'need a reminder'), asked('give me a reminder', 'give me a reminder'),
  asked("don't let me forget to", "don't let me forget"), asked('do not let me forget to', 'do not let me forget'), asked("don't forget to", "don't forget"), asked('do not forget to', 'do not forget'), asked('never let me forget', 'never let me forget'), asked("i mustn't forget to", "mustn't forget"), asked('must not forget to', 'must not forget'), asked("mustn't forget", "mustn't forget"),
  asked('give me a shout', 'give me a shout'), asked('give us a shout', 'give us a shout'), asked('give me a nudge', 'give me a nudge'), asked('give me a poke', 'give me a poke'), asked('give me a bell', 'give me a bell'), asked('give me a ping', 'give me a ping'), asked('give me a buzz', 'give me a buzz'), asked('give me a prod', 'give me a prod'),
  asked('nudge me', 'nudge me'), asked('ping me', 'ping me'), asked('poke me', 'poke me'), asked('prompt me', 'prompt me'), asked('shout at me', 'shout at me'), asked('tell me to', 'tell me to'), asked('…, say it to me then', 'say it to me then'), asked('…, say it to me', 'say it to me'), asked('nag me', 'nag me'), asked('alert me', 'alert me'), asked('note to self', 'note to self'), asked('on my list:', 'on my list'), asked('on the list:', 'on the list'), asked('to do:', 'todo'), asked('put it in the diary to', 'put it in the diary'), asked('chase me', 'chase me'), asked('prod me', 'prod me'), asked('buzz me', 'buzz me'), asked('jog my memory', 'jog my memory'), asked('make sure i', 'make sure i'), asked('make me', 'make me'), asked('notify me', 'notify me'), asked('message me', 'message me'), asked('text me', 'text me'), asked('wake me', 'wake me'),
  asked('must remember to', 'must remember to'), asked('need to remember to', 'need to remember to'), asked('got to remember to', 'got to remember to'), asked('have to remember to', 'have to remember to'), asked('remember to', 'remember to'),
  intended("i'll", "i'll"), intended('i will', 'i will'), intended("we'll", "we'll"), intended('we will', 'we will'), intended('i shall', 'i shall'), intended('will', 'will'), intended('shall', 'shall'),
  intended('going to', 'going to'), intended('planning to', 'planning to'), intended('plan to', 'plan to'), intended('intend to', 'intend to'), intended('intend taking', 'intend'), asked('put me down to', 'put me down to'), asked('set an alert', 'set an alert'), asked('diary:', 'diary'), intended('intending to', 'intending to'), intended('plan on', 'plan on'), intended('planning on', 'planning on'),
  intended('need to', 'need to'), intended('must', 'must'), intended('have to', 'have to'), intended('has to', 'has to'), intended('got to', 'got to'), intended("i'm to", "i'm to"), intended('ought to', 'ought to'), intended('want to', 'want to'), intended('aim to', 'aim to'), intended('aiming to', 'aiming to'), intended('hope to', 'hope to'), intended('hoping to', 'hoping to'), intended('should', 'should'), intended("i'd better", "i'd better"), intended('had better', 'had better'), intended('better', 'better'), intended("i'd like to", "i'd like to"), intended('would like to', 'would like to'), intended('aim is to', 'aim is to'), intended('plan is to', 'plan is to'), intended("let's", "let's"), intended('due to', 'due to'), intended('meaning to', 'meaning to'), intended('mean to', 'mean to'), intended('am due', 'am due'), intended('needs to', 'needs to'), intended('<plant> needs feeding <day>', 'needs'), intended('<plant> wants feeding <day>', 'wants'), intended('<plant> need feeding <day>', 'need'), intended('<plant> want feeding <day>', 'want'), intended('to', 'to'),
]; // prettier-ignore

/** Verbs of tending plants that a bare intention must name to be worth keeping. */
const CHORE =
  /^(?:take|strike|stick|pot|repot|move|shift|bring|put|carry|mist|water|feed|vent|shade|cover|uncover|check|look|pinch|nip|stop|harden|plant|sow|prick|sell|give|send|order|buy|get|collect|pick|clean|wash|label|spray|open|close|shut|turn|dispatch|ship|deliver|load|post|drop|swap|do|start|finish|have|lift|dig|tidy|fleece|transplant|bump|cut|split|set|make|see|try|go|come|ring|call|phone|trim|prune|deadhead|weed|stake|thin|divide|root|propagate|treat|dose|air|tip|bin|empty|fill|top|replace|mix|read|measure|count|inspect|tug|fetch|lug|pack|ready|prepare|prep|stand|acclimatise|acclimate|wean|photograph|book|pay|fix|mend|wrap|insulate|defrost|heat|switch|plug|unplug|watch|photo|mow|wake|box|rotate|soak|drench|dunk|tray|space|be|control|ask|sort|use|bottom|handle|test|turn|weigh)$/;

/** Where a reminder's words end and its matter begins, with the rule that found it. */
export interface FoundRemind {
  readonly rule: RemindRule;
  /** First piece of the cue, and the one past it. */
  readonly from: number;
  readonly to: number;
}

/** The rules by their first word. */
const rulesByWord: ReadonlyMap<string, readonly RemindRule[]> = new Map(
  [...new Set(remindRules.map(({ words }) => words[0] ?? ''))].map((first) => [
    first,
    remindRules.filter(({ words }) => words[0] === first),
  ]),
);

export function findRemind(pieces: readonly Piece[]): FoundRemind | undefined {
  let best: FoundRemind | undefined;
  for (let at = 0; at < pieces.length; at++) {
    for (const rule of rulesByWord.get(wordAt(pieces, at)) ?? []) {
      if (!rule.words.every((word, n) => wordAt(pieces, at + n) === word)) continue;
      const to = at + rule.words.length;
      // "Remind me" is more than "remind".
      if (best?.from === at && best.to >= to) continue;
      if (rule.beforeVerb && !choreFollows(pieces, to)) continue;
      // "The Salt Harrier wants feeding": seen, unless it has its day.
      if (/^(?:needs|need|wants|want)$/.test(rule.words.join(' ')) && !isDatedChore(pieces, at, to)) continue;
      // "Lets go, binned two": a cheer.
      if (rule.words[0] === "let's" && wordAt(pieces, to) === 'go' && wordAt(pieces, to + 1) !== 'and')
        continue;
      if (
        rule.words[0] === 'to' &&
        !isArrangedFor(pieces, at) &&
        (!(pieces[at - 1]?.is === 'when') || isPurpose(pieces, at))
      )
        continue;
      if (rule.words[0] === 'remind' && rule.words.length === 1 && at > 1) continue;
      if (
        /^(?:reminder|todo|better|make|tell|diary)$/.test(rule.words[0] ?? '') &&
        at > (rule.words[0] === 'diary' ? 0 : 2)
      )
        continue;
      if (rule.words[0] === 'on' && at > 0) continue;
      // "Diary of a gardener".
      if (rule.words[0] === 'diary' && !/^(?:break|when)$/.test(pieces[to]?.is ?? '')) continue;
      // "No need to water today".
      if (rule.words[0] === 'need' && wordAt(pieces, at - 1) === 'no') continue;
      if (!best || rule.words.length > best.to - best.from || !best.rule.beforeVerb) {
        if (best && best.from < at && !(rule.words.length > best.to - best.from && at - best.from < 2))
          continue;
        best = { rule, from: at, to };
      }
    }
    if (best && at > best.from + 2) break;
  }
  return best;
}

/** "SH1 to go out to the porch w/c 25 May": plants that open a sentence, and their day to come. */
function isArrangedFor(pieces: readonly Piece[], at: number): boolean {
  return (
    at < 5 &&
    pieces[at - 1]?.is === 'plant' &&
    // "Thirty to order for the council": wanted.
    !(wordAt(pieces, at + 1) === 'order' && wordAt(pieces, at + 2) === 'for') &&
    pieces
      .slice(0, at - 1)
      .every((piece) => piece.is === 'count' || (piece.is === 'word' && piece.verb === undefined)) &&
    pieces
      .slice(at)
      .some(
        (piece) =>
          piece.is === 'when' &&
          piece.when.future !== undefined &&
          JSON.stringify(piece.when.past) !== JSON.stringify(piece.when.future),
      )
  );
}

/** "Salt Harrier wants feeding on Friday": of a plant, with its day behind. */
function isDatedChore(pieces: readonly Piece[], from: number, to: number): boolean {
  const chore = pieces[to];
  return (
    (pieces[from - 1]?.is === 'plant' || pieces[from - 1]?.is === 'place') &&
    chore?.is === 'word' &&
    /ing$/.test(chore.text) &&
    pieces.slice(to).some(({ is }) => is === 'when')
  );
}

/** "Took eleven on Sunday to get out of the house": what a deed was done for. */
function isPurpose(pieces: readonly Piece[], at: number): boolean {
  const start =
    pieces
      .slice(0, at)
      .findLastIndex((_, n) => pieces[n]?.is === 'break' || /^(?:and|but|then|so)$/.test(wordAt(pieces, n))) +
    1;
  return pieces
    .slice(start, at)
    .some(
      (piece) =>
        piece.is === 'word' &&
        piece.verb?.form === 'past' &&
        !/^(?:be|have|need|want|root|plan|mean|decide)$/.test(piece.verb.lemma),
    );
}

function choreFollows(pieces: readonly Piece[], from: number): boolean {
  let at = from;
  while (
    /^(?:just|also|then|be|definitely|probably|have|to|not|try|and|really|go|come|all|either|only|finally|get|round|start)$/.test(
      wordAt(pieces, at),
    ) ||
    pieces[at]?.is === 'when'
  ) {
    if (
      /^(?:get|go|come|have|start|try)$/.test(wordAt(pieces, at)) &&
      !/^(?:to|round|and)$/.test(wordAt(pieces, at + 1))
    )
      break;
    if (wordAt(pieces, at) === 'not') return false;
    at++;
  }
  const piece = pieces[at];
  if (piece?.is !== 'word') return false;
  const lemma = piece.verb?.lemma ?? piece.text.replace(/ing$/, '');
  return CHORE.test(lemma) || CHORE.test(piece.text) || CHORE.test(`${lemma}e`);
}

const EVENT =
  /^(?:sale|sales|fair|fayre|swap|stall|show|market|auction|festival|society|club|nursery|centre|center)$/;

/** "At Saturday's plant sale": named after the plants that it is about, and no planting. */
export const isPlantSale = (pieces: readonly Piece[], at: number): boolean =>
  wordAt(pieces, at) === 'plant' && EVENT.test(wordAt(pieces, at + 1));

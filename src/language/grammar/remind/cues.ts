/** Words that a reminder or an intention opens with. */
import { phrasesOf } from '../../phrases.js';

export interface RemindRule {
  readonly name: string;
  /** Matched from a word of the sentence on; what stands behind it is what is to be done. */
  readonly words: readonly string[];
  /** Only where the next word is the plain form of a verb. */
  readonly beforeVerb?: true;
}

/** Asked for: "remind me to …", "give me a nudge about …". */
const ASKED = phrasesOf`
  remind|(remind|remember) me|remind us|jog my memory
  reminder|set reminder|(set|put|make|add|need|set me|give me) a reminder|set an (alarm|alert)
  (don't|do not|never) let me forget|(don't|do not|mustn't|must not) forget
  (must |need to |got to |have to )?remember to
  give (me|us) a shout|give me a (nudge|poke|bell|ping|buzz|prod)|shout at me
  (nudge|ping|poke|prompt|nag|alert|chase|prod|buzz|notify|message|text|wake) me|tell me to
  make me|make sure i|say it to me|say it to me then|put me down to
  note to self|todo|diary|put it in the diary|on (my|the) list
`;

/** Told: "I'll …", "must …", "the plan is to …". Before the plain form of a verb alone. */
const INTENDED = phrasesOf`
  i'll|we'll|(i |we )?will|(i )?shall|let's
  going to|(plan|planning|intend|intending|aim|aiming|hope|hoping|mean|meaning|want|ought|fixing|fixin|looking|minded) to
  intend|plan on|planning on|(plan|aim) is to
  must|should|(need|needs|have|has|got) to|due to|am due|i'm to|to
  (i'd better|had better|better)|(i'd|would) like to
  needs|wants|need|want
`;

export const remindRules: readonly RemindRule[] = [
  ...ASKED.map((phrase) => ({ name: phrase, words: phrase.split(' ') })),
  ...INTENDED.map((phrase) => ({ name: phrase, words: phrase.split(' '), beforeVerb: true as const })),
];

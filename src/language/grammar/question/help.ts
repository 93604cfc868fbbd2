/** How the program itself is used. */
import { anyOf, whole } from '../../phrases.js';
import type { QuestionRule } from './rule.js';

/** "Help", "commands". */
const FOR_HELP = anyOf`
  help( me| please| pls)?
  i need help
  show help
  menu
  commands|instructions
  what are the commands
  what commands.*
`;

/** "What can I say", "what sorts of things am I allowed to ask". */
const WHAT_TO_SAY = anyOf`
  (what|which) (can|could) (you|u|this|it|i) (even )?(do|say|ask|tell you|log|write|type)\b.*
  what (do|can|should|must) i (even )?(say|type|write|send|tell you)\b.*
  what i (must|should|have|need|can)\b.*\b(write|say|type|send|do)\b.*
  what (am|are) (i|we) (allowed|able|supposed|meant) to (say|ask|tell|type|write)\b.*
  what (sorts?|kinds?) of things? am i (allowed|able|supposed|meant) to (say|ask|tell|type|write)\b.*
  what (sorts?|kinds?) of things? (can|could|do) (you|i)\b.*
  what else (can|could|should|may) (you|i|we) (even )?(do|say|ask|tell you|log|note|record|write|type|send|track|keep track of)\b.*
  what else do you (do|know|understand|keep|log|note|record|track)\b.*
  (what other|which other|any other) (sorts? of |kinds? of )?(things?|stuff|notes?|commands?) (that )?(can|could) (you|i|we) (do|say|ask|tell you|log|note|record|write|type|send)\b.*
  (is there )?anything else (that )?i can (say|ask|tell you|log|note|record|write|type|send you)\b.*
  what words (do|can) (you|i) .*
`;

/** What somebody may want to know how to do. */
const USES = anyOf`
  use|work|start|get started|do this
  log|record|note|write|say|tell|enter|add|make an entry
  undo|change|correct|delete|fix|set
`;

/** "How does this work", "how do I undo". */
const HOW_IT_WORKS = anyOf`
  how (do|does|can|should|must) (i|this|it|you|we) ${USES}\b.*
  how's this work
  how does (this|the) (thing|bot) work
  i don't know how (this|it) works.*
  how to use.*
  what are you for
  what does this do
  what do you do
`;

export const helpQuestions: readonly QuestionRule[] = [
  {
    name: 'help',
    topic: 'help',
    unasked: /./,
    alone: true,
    pattern: whole`
      ${FOR_HELP}
      ${WHAT_TO_SAY}
      ${HOW_IT_WORKS}
    `,
    phrasings: [
      'help please',
      'What can I say?',
      'what kinds of things am I allowed to ask',
      'how do I undo that?',
      'what else can I tell you about?',
      'is there anything else I can log?',
    ],
  },
];

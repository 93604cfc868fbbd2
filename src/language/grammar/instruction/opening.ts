/** How a request may open: "please", "can you", "I want to". */
import { type Phrases, sourceOf } from '../../phrases.js';
import { leading } from '../runs.js';

const OPEN = leading`
  please|pls|kindly|ok|hey|just|now|and|bot|let's|if you would
  (can|could|would|will) you|you can|be (so good|so kind) as to|would you be (so good|so kind) as to
  be (a dear|an angel) and
  (i )?want to|i'd like to|i would like to|i need to|we should
  (i should like|i'd like|i want) you to
`;

/** A pattern for a note that begins with one of these, however it is asked for. */
export const starts = (...body: Phrases): RegExp => new RegExp(`^${OPEN}(?:${sourceOf(body)})`);

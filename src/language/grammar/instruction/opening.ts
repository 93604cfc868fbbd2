/** How a request may open: "please", "can you", "I want to". */
import { leading } from '../runs.js';

const OPEN = `^${leading(
  "please|can you|could you|would you|ok|hey|pls|kindly|just|now|and|i want to|i'd like to|i would like to|let's|want to|you can|will you|bot|be so good as to|be so kind as to|would you be so kind as to|would you be so good as to|if you would|be a dear and|be an angel and|i should like you to|i'd like you to|i want you to|we should|i need to",
)}`;

/** A pattern for a note that begins with `body`, however it is asked for. */
export const starts = (body: string): RegExp => new RegExp(`${OPEN}(?:${body})`);

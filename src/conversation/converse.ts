/** A turn of talk as a pure function: the world before and what came in, to the world after and what is said. */
import type { Instant } from '../calendar/clock.js';
import { contextualAnswer } from './answers/answering.js';
import { editNote } from './correcting/editing.js';
import { finish } from './finishing.js';
import { hear, takeDraft } from './hearing.js';
import { sayText } from './saying.js';
import { lookedToday } from './prompts/prompting.js';
import { Sitting } from './sitting.js';
import { locate } from './settings/locating.js';
import { tap } from './answers/tapping.js';
import { kindWords } from '../words/answers.js';
import { unheardWords } from '../words/heard.js';
import type { Incoming } from './turn.js';
import { bringIn } from './settings/bringing-in.js';
import { takeWeather } from './settings/weather.js';
import type { Turned, World } from './world.js';

/** Works one turn out. `now` is the moment of working; what was said is understood as of the moment it was sent. */
export function converse(world: World, incoming: Incoming, now: Instant): Turned {
  const sitting = new Sitting(world, now, {
    message: incoming.message,
    from: incoming.from.id,
    by: world.current.shared ? incoming.from.name : null,
    at: incoming.at,
  });
  sitting.talk = lookedToday(world, now);
  if (incoming.tap !== undefined) tap(sitting, incoming.tap, incoming.answers);
  else if (incoming.edited && incoming.text !== undefined) editNote(sitting, incoming.text, incoming);
  else if (incoming.text !== undefined) {
    if (wasHeard(sitting)) return sitting.end();
    sayText(sitting, incoming.text, contextualAnswer(sitting, incoming));
  } else if (incoming.heard) hear(sitting, incoming.heard, contextualAnswer(sitting, incoming));
  else if (incoming.location) locate(sitting, incoming.location);
  else if (incoming.unheard) sitting.reply.text.push(unheardWords(incoming.unheard));
  else if (incoming.brought) bringIn(sitting, incoming.brought);
  else if (incoming.weather) takeWeather(sitting, incoming.weather);
  else if (incoming.other) sitting.reply.text.push(kindWords(incoming.other));
  takeDraft(sitting);
  finish(sitting, incoming);
  return sitting.end();
}

/** The same message delivered twice is one. */
function wasHeard({ talk, origin }: Sitting): boolean {
  return talk.heard.some(({ message }) => message === origin.message);
}

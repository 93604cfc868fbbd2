/** Phrases by which growers take back what was said a moment ago; one may follow another. */
export const secondThoughts: readonly string[] = [
  'no', 'nope', 'nah', 'no wait', 'no sorry', 'oops', 'whoops', 'sorry', 'sorry now', 'wait', 'wait a minute', 'hold up', 'hang about', 'whoa', 'my error', 'ignore me', 'actually', 'correction', 'hang on', 'hold on', 'i mean', 'i meant',
  'mistake', 'my mistake', 'i made a mistake', 'i have made a mistake', 'i have made mistake', 'made a mistake', 'my bad', 'typo', 'silly me', 'my fault',
  'i got that wrong', 'got that wrong', 'i had that wrong', 'that was wrong', "that's wrong", 'thats wrong', 'i was wrong', 'i mistyped', 'i misread', 'wrong',
  'counted again', 'counted them again', 'just counted them again', 'counted it again', 'recounted', 'recount', 'just counted', 'just counted again', 'just recounted', 'looked again', 'had another look', "i can't count", 'i cant count', "can't count",
  'muddled', 'sorry muddled', 'got muddled', 'on second thoughts', 'on second thought', 'come to think of it', 'tell a lie', 'i tell a lie', 'i lie', 'i tell lies', "i'm a liar", "i'm lying", "i'm telling lies", "i'm telling you lies", 'listen to me', 'hark at me', 'or rather', 'in fact', 'apologies', 'excuse me', 'yeah nah', 'doh', 'duh', 'not quite', 'pardon', 'pardon me', 'beg pardon', 'i beg pardon', 'beg your pardon', 'i beg your pardon', 'wrong typing', 'fat fingers', 'fat thumbs', 'excuse', "my head's gone", 'losing my mind', "i'm losing it", 'brain fog', 'senior moment',
  ...['scrap', 'scratch', 'strike', 'undo', 'delete', 'cancel', 'scrub', 'forget', 'ignore'].flatMap((undo) => ['that', 'it', 'my last', 'my last message', 'my last note', 'the last message', 'the last one', 'that last one', 'that last message', 'that last note'].map((what) => `${undo} ${what}`)),
  'misread my own writing', 'misread my writing', 'i misread my own writing', 'misread it', 'i misread it', 'false alarm',
  'i miscounted', 'miscounted', 'counted wrong', 'i counted wrong', 'i have counted wrong', 'i have bad counted', 'counted badly', 'wrong count',
  ...["i'm", 'i was', 'i got', "i've got"].flatMap((i) => ['muddled', 'mixed up', 'all mixed up', 'confused', 'in a muddle'].map((how) => `${i} ${how}`)),
  ...['err', 'error', 'mistake', 'slip', 'typo'].flatMap((slip) => ['last', 'the last', 'the last one', 'my last', 'that', 'that last one'].map((where) => `${slip} in ${where}`)),
  ...['date', 'day', 'number', 'count', 'name'].flatMap((slot) => [`i made a mistake with the ${slot}`, `i made mistake with ${slot}`, `made a mistake with the ${slot}`]),
  ...['date', 'day', 'number', 'count', 'place', 'plant', 'name', 'size'].flatMap((slot) => [`i got the ${slot} wrong`, `${slot} wrong`, `${slot}s wrong`, `wrong ${slot}`, `that's the wrong ${slot}`, `that was the wrong ${slot}`]),
]; // prettier-ignore

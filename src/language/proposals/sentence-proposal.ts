/** A sentence to proposals: an undo, a question, a wish, a correction, a reminder, a temperature, acts, else a remark. */
import { proposeActs } from '../acts/acts.js';
import { proposeAmend, proposeRestatement } from '../amending/amend-proposal.js';
import { settleCorrections } from '../sentences/corrections.js';
import { isToDoList } from '../reminding/bare-chores.js';
import { proposeFaultOwned } from '../amending/fault-owned.js';
import { proposeHeldWrongly } from '../amending/held-wrongly.js';
import { proposeCrop } from '../amending/crop-proposal.js';
import { withoutDashedHope } from './dashed-hopes.js';
import { withoutInstead } from '../mood/given-up.js';
import { wordAt } from '../grammar/rule.js';
import { undosIn } from '../grammar/undo.js';
import { withoutHabit } from '../mood/habits.js';
import { settleHeadings } from '../sentences/headings.js';
import type { Note } from '../note.js';
import { settlePastForms } from '../sentences/past-forms.js';
import { withoutPlanBefore, withoutWhatComesNext } from './plan-before.js';
import { plannedThenDone } from './planned-then-done.js';
import type { Proposal } from '../proposal.js';
import { questionStart, twoQuestions } from './question-behind.js';
import { isQuestion, proposeQuestion } from './question-proposal.js';
import { proposeReading } from './reading-proposal.js';
import { placedAs, withoutReadings } from './readings-apart.js';
import { remarkBehind } from './remark-behind.js';
import { proposeRemark } from './remark-proposal.js';
import { proposeRemind } from '../reminding/remind-proposal.js';
import { asksToBeReminded, asksToPutRight, wantsToHave } from '../reminding/reminder-meant.js';
import { settleSameAgain } from '../sentences/same-again.js';
import { type Sentence, sentenceOf } from '../sentences/sentences.js';
import { proposeRetold } from '../amending/retold-proposal.js';
import { proposeSpelling } from '../amending/spelling-proposal.js';
import { proposeTarget } from './target-proposal.js';
import { twoPutRight } from '../amending/two-put-right.js';
import type { Utterance } from '../pieces/utterance.js';
import { withoutVisit } from '../sentences/visits.js';
import { isWrittenElsewhere } from './written-elsewhere.js';
import { withoutLead } from '../amending/restatement/reasons.js';
import { lastPlant, targetThenActs } from './wish-and-deed.js';

/** What a sentence tells or asks: the first of these readings that fits, with the acts beside it. */
export function proposeSentence(
  sentence: Sentence,
  utterance: Utterance,
  note: Note,
  earlier: readonly Proposal[],
): readonly Proposal[] {
  const undone = undosIn(sentence.line);
  if (undone > 0)
    return Array<Proposal>(undone).fill({ kind: 'undo', rule: 'undo that', slots: {}, draft: {} });
  const amended = amendBehind(sentence);
  if (amended > 0) {
    const [before, behind] = [sentence.pieces.slice(0, amended), sentence.pieces.slice(amended + 1)];
    const amend = proposeAmend(sentenceOf(behind, utterance), utterance, false, note);
    const told = amend && proposeSentence(sentenceOf(before, utterance), utterance, note, earlier);
    if (amend && told && told.length > 0) return [...told, amend];
  }
  const owned =
    proposeHeldWrongly(sentence.pieces, utterance) ?? proposeFaultOwned(sentence.pieces, utterance);
  if (owned) return [owned];
  const deed = plannedThenDone(sentence, utterance);
  if (deed) return deed;
  if (
    !asksToBeReminded(sentence.pieces) &&
    !asksToPutRight(sentence.line) &&
    (isQuestion(sentence) || sentence.pieces.length < 12)
  ) {
    const split = questionStart(sentence, utterance, note);
    if (split > 0) {
      const before = sentenceOf(sentence.pieces.slice(0, split), utterance);
      const after = sentenceOf(sentence.pieces.slice(split + 1), utterance, sentence.asked);
      return [
        ...proposeSentence(before, utterance, note, earlier),
        ...(proposeQuestion(after, utterance) ?? []),
      ];
    }
    const question = twoQuestions(sentence, utterance) ?? proposeQuestion(sentence, utterance);
    if (question) return question;
  }
  if (isWrittenElsewhere(sentence, utterance, note) || isToDoList(sentence)) return [];
  const corrected = sentenceOf(
    settleSameAgain(
      settleHeadings(
        withoutVisit(
          withoutHabit(
            withoutPlanBefore(
              withoutWhatComesNext(
                withoutDashedHope(settlePastForms(withoutInstead(settleCorrections(sentence.pieces)))),
              ),
            ),
          ),
        ),
      ),
    ),
    utterance,
    sentence.asked,
  );
  const wish = targetThenActs(corrected, utterance, note);
  if (wish) return wish;
  const { rest, before: readBefore, behind: readBehind } = withoutReadings(corrected, utterance, note);
  const acts = proposeActs(rest, [...earlier, ...readBefore], utterance, note);
  const both = twoPutRight(sentence, utterance, note);
  if (both) return both;
  const led = withoutLead(sentence.pieces, utterance);
  const said = led === sentence.pieces ? sentence : sentenceOf(led, utterance, sentence.asked);
  const amend =
    proposeCrop(sentence, note) ??
    proposeRetold(sentence) ??
    proposeSpelling(sentence, utterance) ??
    proposeRestatement(led, utterance, note) ??
    proposeAmend(said, utterance, acts.hits > 0, note);
  if (amend) return [amend];
  const wanted = proposeTarget(corrected, acts.proposals.length > 0, lastPlant(earlier));
  if (wanted && wantsToHave(corrected.pieces)) return wanted;
  const remind = proposeRemind(corrected, utterance, note);
  if (remind) {
    const before = proposeActs(remind.before, earlier, utterance, note);
    // "Doreen wants 50 Salt Harrier for October, so can you remind me in May to take cuttings".
    const target =
      before.proposals.length === 0 && remind.before.some(({ is }) => is === 'plant')
        ? proposeTarget(sentenceOf(remind.before, utterance), false)
        : undefined;
    const told = target ?? before.proposals;
    return [...told, ...ofPlantTold(remind.proposals, [...earlier, ...told])];
  }
  if (wanted) return wanted;
  const apart = [...readBefore, ...readBehind.map(({ reading }) => reading)];
  const whole = acts.proposals.length === 0 ? proposeReading(corrected, note) : undefined;
  const readings = whole && apart.length >= whole.length ? apart : whole;
  if (readings) return readings;
  const done = [...readBefore, ...acts.proposals, ...placedAs(acts.proposals, readBehind)];
  if (done.length > 0) return done;
  const remark = acts.hits > 0 ? undefined : proposeRemark(corrected, utterance);
  return remark ?? remarkBehind(corrected, utterance);
}

/** "Watered the Salt Harrier. Remind me to feed them": of the one plant that was told before. */
function ofPlantTold(reminders: readonly Proposal[], told: readonly Proposal[]): readonly Proposal[] {
  const plants = told.flatMap(({ draft, carried }) => draft.plant ?? carried ?? []);
  const [first] = plants;
  if (!first || plants.some((plant) => JSON.stringify(plant) !== JSON.stringify(first))) return reminders;
  return reminders.map((each) =>
    each.draft.plant === undefined &&
    /\b(?:them|they|those|these|the (?:others|rest))\b/i.test(String(each.slots['text'] ?? ''))
      ? { ...each, carried: first }
      : each,
  );
}

/** "Lost a Salt Harrier too, and make that three for the Tallow Bell": where what is put right of another plant begins; none is -1. */
function amendBehind({ pieces }: Sentence): number {
  return pieces.findIndex(
    (_, at) =>
      at > 1 &&
      wordAt(pieces, at) === 'and' &&
      /^(?:make|call)$/.test(wordAt(pieces, at + 1)) &&
      /^(?:that|it)$/.test(wordAt(pieces, at + 2)) &&
      pieces[at + 3]?.is === 'count' &&
      /^(?:for|of)$/.test(wordAt(pieces, at + 4)) &&
      pieces.slice(at + 5, at + 7).some(({ is }) => is === 'plant'),
  );
}

/** Words that tell whether a doing is denied, supposed, intended, reported, or was managed. */

export const DENIAL =
  /^(?:not|never|neither|nor|no|cannot|nobody|without|forgot|forgotten|failed|haven't|hasn't|hadn't|didn't|don't|doesn't|won't|can't|couldn't|isn't|aren't|wasn't|weren't|ain't|refused|nearly|almost|avoid|avoided)$/;
export const SUPPOSED =
  /^(?:if|would|wouldn't|would've|could've|should've|might've|could|might|may|unless|wish|wished|wishing|regret|supposed|hypothetically|suppose|imagine|whether|shouldn't|meant|dreamt|dreamed|dream|tempted|wondering|wonder|considered|considering|thinking|thought)$/;
export const INTENDED =
  /^(?:will|i'll|we'll|shall|gonna|going|must|need|needs|plan|planning|intend|want|hoping|hope|tomorrow|should|ought|let's|aim|aiming|intention|ready|due|they'll|you'll|he'll|she'll|it'll)$/;
export const REPORT =
  /^(?:says|said|say|saying|reckon|reckons|reckoned|thinks|told|tells|asked|asks|ask|suggests|suggested|advised|advises|recommends|recommended|swears|swore|claims|claimed|insists|insisted|apparently|according|heard|read|reads|states|wants|mentioned|telling|saying|boasting|bragging|boasted|bragged|complaining|moaning|announced)$/;
export const MANAGED =
  /^(?:plucked|mustered|found|managed|manage|got|able|remembered|started|began|begun|helped|stopped|went|decided|chance|starting|continued)$/;
/** With "to" behind: "keen to crack on", "fixing to set them out". */
export const WISHES =
  /^(?:keen|eager|itching|raring|longing|desperate|fixing|fixin|aching|determined|liable|minded)$/;

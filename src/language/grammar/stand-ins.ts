/** Words that stand for plants spoken of before. */

/** "Them", "everything", "the trays". */
export const THEM =
  /^(?:them|em|those|they|everything|it|these|batch|lot|cuttings|pots|tray|trays|all|both)$/;

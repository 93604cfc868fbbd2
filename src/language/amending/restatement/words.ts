/** The small words by which a value is put right: pronouns, "was" and the deeds that entries are made of. */
export const PRONOUN = /^(?:it|that|they|this|those|these)$/;
export const WAS = /^(?:was|were)$/;
export const TAKEN = /^(?:take|strike|stick|pot|lose|sell|pinch|plant|move|give|get|do|root|cut)$/;
/** The deeds that a batch begins with. */
export const CUT = /^(?:take|strike|cut|root|get)$/;

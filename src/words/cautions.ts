/** The usual cautions of the trade, short; local rules and qualified people come first. */

/** Null for one that needs no words of its own. */
export function cautionWords(caution: string, crop: string | null): string | null {
  const plant = crop ?? 'this plant';
  switch (caution) {
    case 'blades':
      return 'Take care: a clean, sharp blade, cut away from you.';
    case 'skinIrritant':
      return `Take care: the sap of ${plant} can irritate skin; gloves, and wash your hands.`;
    case 'poisonousIfEaten':
      return `Take care: ${plant} is poisonous if eaten; keep it from children and pets.`;
    case 'sapBurnsInSun':
      return `Take care: the sap of ${plant} can burn skin in sunlight; gloves and long sleeves.`;
    case 'thorns':
      return `Take care: ${plant} has thorns; stout gloves and eyes out of the way.`;
    case 'protectedVarieties':
      return `Some varieties of ${plant} are protected: those may not be multiplied, least of all for sale, without leave. Your local rules decide.`;
    case 'diseaseHygiene':
      return `Take care: blight travels on blades; clean them between plants of ${plant}.`;
    case 'keepContained':
      return `Take care: ${plant} spreads at the root; keep it in pots.`;
    case 'noPinchBeforePotting':
      return `Take care: ${plant} is not pinched before it is potted on; wounds that early let gall in.`;
    default:
      return null;
  }
}

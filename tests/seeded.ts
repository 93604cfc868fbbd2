/**
 * Gives every property test the same seed, so that a fault found is found again, and a change is not blamed for a rare
 * case that was there before. `SLIPNOTE_TEST_SEED=random` explores; a number repeats one run.
 */
import fc from 'fast-check';

const asked = process.env['SLIPNOTE_TEST_SEED'] ?? '20260525';
if (asked !== 'random') fc.configureGlobal({ seed: Number(asked) });

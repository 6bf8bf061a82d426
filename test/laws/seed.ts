import fc from 'fast-check';

/**
 * Generated stations are the same in every run, so that a clean machine says what this one said.
 * LAW_SEED=any draws others, LAW_SEED=NUMBER those of a failure that printed its seed.
 */
const asked = process.env.LAW_SEED ?? '20';
if (asked !== 'any') fc.configureGlobal({ seed: Number(asked) });

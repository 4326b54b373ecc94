import fc from 'fast-check';

// One seed for everyone, so that a red run is red everywhere; SEED=… explores, as the fuzzing job does.
const seed = Number(process.env.SEED ?? 20260814);
fc.configureGlobal({ ...fc.readConfigureGlobal(), seed });

import fc from "fast-check";

/** One seed for every property, so that a failure can be run again; set TAMIS_SEED to try another. */
const seed = Number(process.env["TAMIS_SEED"] ?? 20261125);
fc.configureGlobal({ seed, numRuns: Number(process.env["TAMIS_RUNS"] ?? 100) });

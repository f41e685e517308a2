/** stop: the work cannot go on from here. warn: it goes on, and may be wrong. note: an assumption was made. */
export type Severity = "stop" | "warn" | "note";

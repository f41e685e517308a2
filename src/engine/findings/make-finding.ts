import type { SourceId, Span } from "../model/span.ts";
import { type Code, type FactsOf, severityOf } from "./codes.ts";
import type { Finding, Fix, Related } from "./finding.ts";

/** Builds a finding of one code with the severity that the register gives it. */
export const makeFinding = <C extends Code>(
  code: C,
  source: SourceId,
  span: Span,
  facts: FactsOf[C],
  more: {
    readonly related?: readonly Related[];
    readonly fixes?: readonly Fix[];
    readonly path?: string;
  } = {},
): Finding =>
  ({
    code,
    severity: severityOf[code],
    source,
    span,
    path: more.path ?? null,
    facts,
    related: more.related ?? [],
    fixes: more.fixes ?? [],
  }) as Finding;

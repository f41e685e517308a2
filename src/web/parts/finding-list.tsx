import type { Finding } from "#engine/index.ts";
import { messageOf } from "#words/en.ts";
import { SeverityMark } from "./marks.tsx";

/** So many findings of one kind are shown at once; more fold behind the first. */
const shownAtOnce = 3;

/** Findings as sentences. Many of one kind are folded, so that they do not push away what they speak of. */
export const FindingList = ({ findings }: { findings: readonly Finding[] }) => {
  if (findings.length === 0) return null;
  const codes = [...new Set(findings.map((f) => f.code))];
  return (
    <ul class="plain remarks no-print">
      {codes.map((code) => {
        const own = findings.filter((f) => f.code === code);
        const [first] = own;
        if (first === undefined) return null;
        if (own.length <= shownAtOnce) return own.map((f) => <Item key={keyOf(f)} finding={f} />);
        return (
          <li key={code} class={`remark remark-${first.severity}`}>
            <SeverityMark of={first.severity} />
            <details>
              <summary>
                {messageOf(first)} <b>And {own.length - 1} more like it.</b>
              </summary>
              <ul>
                {own.slice(1).map((f) => (
                  <li key={keyOf(f)}>{messageOf(f)}</li>
                ))}
              </ul>
            </details>
          </li>
        );
      })}
    </ul>
  );
};

const keyOf = (f: Finding): string => JSON.stringify([f.code, f.source, f.span, f.facts]);

const Item = ({ finding }: { finding: Finding }) => (
  <li class={`remark remark-${finding.severity}`}>
    <SeverityMark of={finding.severity} />
    <p>{messageOf(finding)}</p>
  </li>
);

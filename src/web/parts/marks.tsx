import type { Attention, GuestVerdict, Severity } from "#engine/index.ts";

/** A small drawing that stands beside words, never for them. */
const Mark = ({ kind, children }: { kind: string; children: preact.ComponentChildren }) => (
  <svg
    class={`mark mark-${kind}`}
    viewBox="0 0 20 20"
    width="18"
    height="18"
    aria-hidden="true"
    focusable="false"
  >
    {children}
  </svg>
);

/** Full disc: hands on. Half disc: an eye on it. Ring: goes alone. */
export const AttentionMark = ({ of }: { of: Attention }) => (
  <Mark kind={of}>
    <circle
      cx="10"
      cy="10"
      r="7"
      fill={of === "hands" ? "currentColor" : "none"}
      stroke="currentColor"
      stroke-width="2"
    />
    {of === "mind" && <path d="M10 3a7 7 0 0 1 0 14z" fill="currentColor" />}
  </Mark>
);

/** Octagon: stop. Triangle: warn. Disc with a stem: note. */
export const SeverityMark = ({ of }: { of: Severity }) => (
  <Mark kind={of}>
    {of === "stop" && (
      <path
        d="M6.5 2h7L18 6.5v7L13.5 18h-7L2 13.5v-7z M5 9h10v2H5z"
        fill="currentColor"
        fill-rule="evenodd"
      />
    )}
    {of === "warn" && (
      <path d="M10 2 19 18H1z M9 7.5v5h2v-5z M9 14v2h2v-2z" fill="currentColor" fill-rule="evenodd" />
    )}
    {of === "note" && (
      <g fill="none" stroke="currentColor" stroke-width="2">
        <circle cx="10" cy="10" r="7.5" />
        <path d="M10 9v5M10 5.6v2" />
      </g>
    )}
  </Mark>
);

/** Ring, two bars that change places, diamond, cross: the answers of the guest grid. */
export const AnswerMark = ({ of }: { of: GuestVerdict["answer"] }) => (
  <Mark kind={`answer-${of}`}>
    <g fill="none" stroke="currentColor" stroke-width="2.2" stroke-linecap="round" stroke-linejoin="round">
      {of === "yes" && <circle cx="10" cy="10" r="6.5" />}
      {of === "swap" && <path d="M3 7h12l-3-3M17 13H5l3 3" />}
      {of === "check" && <path d="M10 2.5 17.5 10 10 17.5 2.5 10zM10 7v3.5M10 13v.2" />}
      {of === "no" && <path d="M4 4l12 12M16 4 4 16" />}
    </g>
  </Mark>
);

/** The drum sieve that the house is named after. */
export const HouseMark = () => (
  <svg class="house-mark" viewBox="0 0 32 32" width="34" height="34" aria-hidden="true" focusable="false">
    <circle cx="16" cy="16" r="13" fill="none" stroke="currentColor" stroke-width="3.5" />
    <path d="M8 12h16M6 16h20M8 20h16M12 8v16M16 6v20M20 8v16" stroke="currentColor" stroke-width="1" />
  </svg>
);

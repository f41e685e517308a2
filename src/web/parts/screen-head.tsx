import type { ComponentChildren } from "preact";

/** The head of a screen: its name, a line about it, and what can be done. */
export const ScreenHead = ({
  title,
  lead,
  children,
}: {
  title: string;
  lead?: ComponentChildren;
  children?: ComponentChildren;
}) => (
  <header class="screen-head">
    <div>
      <h1 tabIndex={-1}>{title}</h1>
      {lead !== undefined && <p class="lead">{lead}</p>}
    </div>
    {children !== undefined && <div class="screen-tools">{children}</div>}
  </header>
);
